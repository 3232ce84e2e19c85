# expect: meets limits.load_protection on load.lights
# expect: meets limits.load_protection on load.fan
# expect: meets limits.load_protection on load.gate

load "fan" {
  from          = "supply.twelve"
  power         = "24 W"
  surge         = "24 W"
  hours_per_day = 5
  voltage_min   = "11 V"
  voltage_max   = "15 V"
  cable_run {
    size       = "2.5 mm2"
    length     = "3 m"
    insulation = "90 degC"
    voltage    = "600 V"
    ampacity   = "25 A"
    ambient    = "35 degC"
  }
}

load "heater" {
  from          = "supply.twelve"
  power         = "24 W"
  surge         = "24 W"
  hours_per_day = 5
  voltage_min   = "11 V"
  voltage_max   = "15 V"
  cable_run {
    size       = "2.5 mm2"
    length     = "3 m"
    insulation = "90 degC"
    voltage    = "600 V"
    ampacity   = "25 A"
    ambient    = "35 degC"
  }
  fuse {
    class      = "other"
    rating     = "5 A"
    voltage    = "32 V"
    interrupts = "10 kA"
    dc_rated   = true
  }
}

load "gate" {
  from          = "charger.main.load_terminals"
  power         = "24 W"
  surge         = "24 W"
  hours_per_day = 5
  voltage_min   = "21 V"
  voltage_max   = "30 V"
  cable_run {
    size       = "2.5 mm2"
    length     = "3 m"
    insulation = "90 degC"
    voltage    = "600 V"
    ampacity   = "20 A"
    ambient    = "35 degC"
  }
}
