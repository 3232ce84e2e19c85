# expect: breaks limits.source_voltage on charge_source.engine

charge_source "engine" {
  bank               = "house"
  charge_current     = "40 A"
  charge_voltage     = "29.4 V"
  cold_charge_cutoff = "5 degC"
  together           = true
  cable_run {
    size       = "16 mm2"
    length     = "3 m"
    insulation = "90 degC"
    voltage    = "600 V"
    ampacity   = "80 A"
    ambient    = "40 degC"
  }
  fuse {
    class      = "T"
    rating     = "60 A"
    voltage    = "125 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
  }
}
