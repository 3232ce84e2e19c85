# expect: breaks vehicle.residual_current on ac_output.cabin

ac_output "cabin" {
  inverter   = "sedge-1500"
  bank       = "house"
  low_cutoff = "23 V"
  cable_run {
    size       = "35 mm2"
    length     = "1 m"
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
    rating     = "100 A"
    voltage    = "125 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
  }
  declared "vehicle" {
    residual_current = "300 mA"
  }
}
