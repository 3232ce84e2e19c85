# expect: breaks iec.bond_size on grounding

grounding {
  dc                      = "negative"
  dc_bonds                = 1
  neutral_bonds           = 1
  frames_bonded           = true
  ground_fault_protection = true
  surge_protection        = true
  declared "iec" {
    bond_size          = "4 mm2"
    earthing           = "solid"
    insulation_monitor = false
  }
}
