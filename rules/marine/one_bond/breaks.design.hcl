# expect: breaks marine.one_bond on grounding

grounding {
  dc                      = "negative"
  dc_bonds                = 2
  neutral_bonds           = 1
  frames_bonded           = true
  ground_fault_protection = true
  surge_protection        = true
}
