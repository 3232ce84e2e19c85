# expect: breaks limits.converter_current on supply.twelve

load "radio" {
  from          = "supply.twelve"
  power         = "300 W"
  surge         = "50 W"
  hours_per_day = 3
  voltage_min   = "11 V"
  voltage_max   = "15 V"
}
