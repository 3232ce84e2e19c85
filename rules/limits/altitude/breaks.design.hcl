# expect: breaks limits.altitude on charger.main

site {
  latitude  = "47 deg"
  longitude = "8 deg"
  elevation = "3400 m"
  coldest   = "-20 degC"
  hottest   = "30 degC"
  place     = "building"
}
