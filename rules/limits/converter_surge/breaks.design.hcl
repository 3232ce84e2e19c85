# expect: breaks limits.converter_surge on load.radio

load "radio" {
  from          = "supply.twelve"
  power         = "50 W"
  surge         = "400 W"
  hours_per_day = 3
  voltage_min   = "11 V"
  voltage_max   = "15 V"
}
