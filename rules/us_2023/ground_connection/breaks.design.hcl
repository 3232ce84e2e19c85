# expect: breaks us_2023.ground_connection on grounding

grounding {
  dc                      = "negative"
  dc_bonds                = 2
  neutral_bonds           = 1
  frames_bonded           = true
  ground_fault_protection = true
  surge_protection        = true
  declared "us_2023" {
    electrode = true
    rod_only  = false
    gec_size  = "1/0 AWG"
  }
}
