# expect: breaks practice.design_cold on site

site {
  latitude  = "47 deg"
  longitude = "8 deg"
  elevation = "950 m"
  coldest   = "28 degC"
  hottest   = "30 degC"
  place     = "building"
}
