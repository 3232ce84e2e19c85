# expect: breaks iec.surge on pv_input.main.1

site {
  latitude  = "47 deg"
  longitude = "8 deg"
  elevation = "950 m"
  coldest   = "-20 degC"
  hottest   = "30 degC"
  place     = "building"
  declared "iec" {
    critical_length = "18 m"
  }
}

grounding {
  dc                      = "negative"
  dc_bonds                = 1
  neutral_bonds           = 1
  frames_bonded           = true
  ground_fault_protection = true
  surge_protection        = false
  declared "iec" {
    bond_size          = "6 mm2"
    earthing           = "solid"
    insulation_monitor = false
  }
}
