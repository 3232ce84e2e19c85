# expect: breaks iec.smallest_conductor on cable_run.load.lights

load "lights" {
  from          = "bank.house"
  power         = "60 W"
  surge         = "60 W"
  hours_per_day = 5
  voltage_min   = "21 V"
  voltage_max   = "32 V"
  cable_run {
    size       = "1 mm2"
    length     = "8 m"
    insulation = "70 degC"
    voltage    = "600 V"
    ambient    = "30 degC"
    grouped    = 2
    method     = "conduit"
    cores      = "multi"
    declared "iec" {
      perforated   = true
      single_layer = true
    }
  }
  fuse {
    class      = "gG"
    rating     = "6 A"
    voltage    = "58 V"
    interrupts = "10 kA"
    dc_rated   = true
    distance   = "0.2 m"
  }
  declared "iec" {
    lighting = true
  }
}
