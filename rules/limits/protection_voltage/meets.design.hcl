# expect: meets limits.protection_voltage on protection.array.south

load "freezer" {
  from  = "ac_output.cabin"
  power = "200 W"
  surge = "600 W"
  breaker {
    rating = "10 A"
  }
}

load "radio" {
  fuse {
    rating   = "7.5 A"
    voltage  = "14 V"
    dc_rated = true
  }
  from          = "supply.twelve"
  power         = "50 W"
  surge         = "50 W"
  hours_per_day = 3
  voltage_min   = "11 V"
  voltage_max   = "15 V"
}

load "porch" {
  fuse {
    rating   = "3 A"
    voltage  = "32 V"
    dc_rated = true
  }
  from          = "charger.main.load_terminals"
  power         = "24 W"
  surge         = "24 W"
  hours_per_day = 10
  voltage_min   = "21 V"
  voltage_max   = "30 V"
}
