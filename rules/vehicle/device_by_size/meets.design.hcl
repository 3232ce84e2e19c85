# expect: meets vehicle.device_by_size on protection.load.lights

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

# A load may bear the name of what stands between batteries.
load "each" {
  from          = "bank.house"
  power         = "30 W"
  surge         = "30 W"
  hours_per_day = 0.5
  voltage_min   = "21 V"
  voltage_max   = "30 V"
  cable_run {
    size       = "2.5 mm2"
    length     = "4 m"
    strand     = "class_5"
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

# A fuse without a conductor.
load "spare" {
  from          = "bank.house"
  power         = "30 W"
  surge         = "30 W"
  hours_per_day = 0.5
  voltage_min   = "21 V"
  voltage_max   = "30 V"
  fuse {
    class      = "other"
    rating     = "5 A"
    voltage    = "32 V"
    interrupts = "10 kA"
    dc_rated   = true
    distance   = "0.2 m"
  }
}

# Sockets behind the inverter: their conductors are those of the mains.
load "socket" {
  from          = "ac_output.cabin"
  power         = "300 W"
  surge         = "300 W"
  hours_per_day = 0.5
  cable_run {
    size       = "2.5 mm2"
    length     = "4 m"
    strand     = "solid"
    insulation = "70 degC"
    voltage    = "500 V"
    ambient    = "35 degC"
    grouped    = 2
  }
  breaker {
    class      = "B"
    rating     = "16 A"
    interrupts = "6 kA"
    poles      = 2
  }
}
