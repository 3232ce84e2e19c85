# expect: meets iec.surge on pv_input.main.1

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
