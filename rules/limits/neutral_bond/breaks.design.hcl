# expect: breaks limits.neutral_bond on grounding

grounding {
  dc                      = "negative"
  dc_bonds                = 1
  neutral_bonds           = 2
  frames_bonded           = true
  ground_fault_protection = true
  surge_protection        = true
}
