# expect: meets iec.insulation_monitor on grounding

grounding {
  dc                      = "floating"
  dc_bonds                = 1
  neutral_bonds           = 1
  frames_bonded           = true
  ground_fault_protection = true
  surge_protection        = true
  declared "iec" {
    bond_size          = "6 mm2"
    earthing           = "solid"
    insulation_monitor = true
  }
}
