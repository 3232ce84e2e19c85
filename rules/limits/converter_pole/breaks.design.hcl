# expect: breaks limits.converter_pole on supply.twelve

grounding {
  dc                      = "positive"
  dc_bonds                = 1
  neutral_bonds           = 1
  frames_bonded           = true
  ground_fault_protection = true
  surge_protection        = true
}
