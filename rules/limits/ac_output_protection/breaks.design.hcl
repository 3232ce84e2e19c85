# expect: breaks limits.ac_output_protection on ac_output.cabin

ac_output "cabin" {
  inverter   = "sedge-1500"
  bank       = "house"
  low_cutoff = "23 V"
  cable_run {
    size       = "35 mm2"
    length     = "1 m"
    insulation = "90 degC"
    voltage    = "600 V"
    ampacity   = "140 A"
    ambient    = "35 degC"
  }
}
