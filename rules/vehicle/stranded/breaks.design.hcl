# expect: breaks vehicle.stranded on cable_run.load.lights

site {
  latitude  = "47 deg"
  longitude = "8 deg"
  elevation = "950 m"
  coldest   = "-20 degC"
  hottest   = "30 degC"
  place     = "vehicle"
  declared "vehicle" {
    standard = "nec_552"
  }
}

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
    strand     = "solid"
    insulation = "105 degC"
    voltage    = "600 V"
    ambient    = "35 degC"
    grouped    = 2
    declared "vehicle" {
      chassis_return = false
    }
  }
  fuse {
    class      = "other"
    rating     = "5 A"
    voltage    = "32 V"
    interrupts = "10 kA"
    dc_rated   = true
    distance   = "0.2 m"
  }
}
