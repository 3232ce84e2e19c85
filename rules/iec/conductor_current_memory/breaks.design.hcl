# expect: breaks iec.conductor_current_memory on cable_run.charge_source.engine

charge_source "engine" {
  bank               = "house"
  charge_current     = "40 A"
  charge_voltage     = "28.6 V"
  cold_charge_cutoff = "5 degC"
  together           = true
  cable_run {
    size       = "2.5 mm2"
    length     = "3 m"
    insulation = "90 degC"
    voltage    = "600 V"
    ambient    = "40 degC"
    grouped    = 2
    method     = "direct_buried"
    cores      = "multi"
    declared "iec" {
      ground_temperature = "20 degC"
    }
  }
  fuse {
    class      = "gG"
    rating     = "63 A"
    voltage    = "125 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
  }
}
