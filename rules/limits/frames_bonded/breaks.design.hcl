# expect: breaks limits.frames_bonded on grounding

grounding {
  dc                      = "negative"
  dc_bonds                = 1
  neutral_bonds           = 1
  frames_bonded           = false
  ground_fault_protection = true
  surge_protection        = true
}
