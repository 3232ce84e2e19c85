# expect: meets vehicle.auxiliary_battery on bank.house

site {
  latitude  = "47 deg"
  longitude = "8 deg"
  elevation = "950 m"
  coldest   = "-20 degC"
  hottest   = "30 degC"
  place     = "vehicle"
  declared "vehicle" {
    standard = "en_1648"
  }
}
