# expect: breaks us_2023.scope on site

site {
  latitude  = "38 deg"
  longitude = "-105 deg"
  elevation = "900 m"
  coldest   = "-20 degC"
  hottest   = "36 degC"
  place     = "boat"
  declared "us_2023" {
    occupancy = "other"
    structure = "building"
  }
}
