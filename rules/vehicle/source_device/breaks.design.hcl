# expect: breaks vehicle.source_device on charge_source.engine

charge_source "engine" {
  bank               = "house"
  charge_current     = "40 A"
  charge_voltage     = "28.6 V"
  cold_charge_cutoff = "5 degC"
  together           = true
  cable_run {
    size       = "16 mm2"
    length     = "3 m"
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
    class      = "T"
    rating     = "60 A"
    voltage    = "125 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
  }
  declared "vehicle" {
    self_limiting    = false
    device_at_source = "4 m"
    shore_power      = false
  }
}
