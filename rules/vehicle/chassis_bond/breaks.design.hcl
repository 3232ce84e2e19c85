# expect: breaks vehicle.chassis_bond on bank.house

site {
  latitude  = "47 deg"
  longitude = "8 deg"
  elevation = "950 m"
  coldest   = "-20 degC"
  hottest   = "30 degC"
  place     = "vehicle"
  declared "vehicle" {
    standard = "nec_552"
  }
}

grounding {
  dc                      = "negative"
  dc_bonds                = 1
  neutral_bonds           = 1
  frames_bonded           = true
  ground_fault_protection = true
  surge_protection        = true
  declared "vehicle" {
    chassis_bond_size = "16 mm2"
  }
}
