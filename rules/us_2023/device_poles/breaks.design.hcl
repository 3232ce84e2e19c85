# expect: breaks us_2023.device_poles on protection.charger.main

grounding {
  dc                      = "floating"
  dc_bonds                = 0
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
