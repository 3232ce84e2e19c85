# expect: breaks limits.load_terminals on charger.main

load "porch" {
  from          = "charger.main.load_terminals"
  power         = "600 W"
  surge         = "24 W"
  hours_per_day = 10
  voltage_min   = "21 V"
  voltage_max   = "30 V"
}
