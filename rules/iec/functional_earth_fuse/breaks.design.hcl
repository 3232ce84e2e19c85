# expect: breaks iec.functional_earth_fuse on grounding

grounding {
  dc                      = "negative"
  dc_bonds                = 1
  neutral_bonds           = 1
  frames_bonded           = true
  ground_fault_protection = true
  surge_protection        = true
  declared "iec" {
    bond_size             = "6 mm2"
    earthing              = "fuse"
    functional_earth_fuse = "3 A"
    insulation_monitor    = false
  }
}
