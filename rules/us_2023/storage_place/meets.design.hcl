# expect: meets us_2023.storage_place on bank.house (room)
# expect: meets us_2023.storage_place on bank.house (energy)

site {
  latitude  = "38 deg"
  longitude = "-105 deg"
  elevation = "900 m"
  coldest   = "-20 degC"
  hottest   = "36 degC"
  place     = "building"
  declared "us_2023" {
    occupancy = "one_two_family"
    structure = "building"
  }
}
