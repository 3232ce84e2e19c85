# expect: breaks vehicle.chassis_return on cable_run.load.lights

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
    strand     = "class_5"
    insulation = "105 degC"
    voltage    = "600 V"
    ambient    = "35 degC"
    grouped    = 2
    declared "vehicle" {
      chassis_return = true
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
