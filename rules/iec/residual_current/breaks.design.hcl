# expect: breaks iec.residual_current on ac_output.cabin (sensitivity)
# expect: breaks iec.residual_current on ac_output.cabin (type)

ac_output "cabin" {
  inverter   = "sedge-1500"
  bank       = "house"
  low_cutoff = "23 V"
  cable_run {
    size       = "35 mm2"
    length     = "1 m"
    insulation = "90 degC"
    voltage    = "600 V"
    ambient    = "35 degC"
    grouped    = 2
    method     = "surface"
    cores      = "single"
  }
  fuse {
    class      = "gG"
    rating     = "100 A"
    voltage    = "125 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
  }
  declared "iec" {
    residual_type    = "AC"
    residual_current = "300 mA"
  }
}
