# expect: breaks us_2023.electrode on grounding (electrode)
# expect: breaks us_2023.electrode on grounding (conductor)

grounding {
  dc                      = "negative"
  dc_bonds                = 1
  neutral_bonds           = 1
  frames_bonded           = true
  ground_fault_protection = true
  surge_protection        = true
  declared "us_2023" {
    electrode = false
    rod_only  = false
    gec_size  = "8 AWG"
  }
}
