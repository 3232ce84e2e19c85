# expect: meets vehicle.chassis_return on cable_run.load.lights

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
