# expect: breaks practice.surge_protection on grounding

grounding {
  dc                      = "negative"
  dc_bonds                = 1
  neutral_bonds           = 1
  frames_bonded           = true
  ground_fault_protection = true
  surge_protection        = false
}
