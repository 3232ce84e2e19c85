# expect: meets vehicle.stranded on cable_run.load.lights

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
