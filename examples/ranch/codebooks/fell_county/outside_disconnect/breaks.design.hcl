# expect: breaks fell_county.outside_disconnect on array.south

array "south" {
  charger  = "main"
  tilt     = "35 deg"
  azimuth  = "180 deg"
  mounting = "roof_standoff"
  declared "fell_county" {
    outside_disconnect = false
  }
  string "a" {
    panels   = { "bluff-330" = 3 }
    parallel = 2
  }
  cable_run {
    size   = "8 AWG"
    length = "8 m"
  }
}
