# expect: breaks limits.load_protection on load.lights
# expect: breaks limits.load_protection on load.fan

load "lights" {
  from          = "bank.house"
  power         = "60 W"
  surge         = "60 W"
  hours_per_day = 5
  voltage_min   = "21 V"
  voltage_max   = "30 V"
  cable_run {
    size       = "2.5 mm2"
    length     = "8 m"
    insulation = "90 degC"
    voltage    = "600 V"
    ampacity   = "20 A"
    ambient    = "35 degC"
  }
}

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
    ampacity   = "6 A"
    ambient    = "35 degC"
  }
}
