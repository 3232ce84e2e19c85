# expect: breaks limits.load_terminals_surge on load.porch

load "porch" {
  from          = "charger.main.load_terminals"
  power         = "24 W"
  surge         = "900 W"
  hours_per_day = 10
  voltage_min   = "21 V"
  voltage_max   = "30 V"
}
