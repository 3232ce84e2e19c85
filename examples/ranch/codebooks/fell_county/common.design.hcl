# What the examples of this codebook share: an array on a building.

design "Three Forks shed" {
  revision = "A"
}

site {
  coldest = "-30 degC"
  hottest = "36 degC"
  place   = "building"
}

bank "house" {
  battery  = "bench-100"
  series   = 1
  parallel = 2
}

charger "main" {
  controller = "gully-60"
  bank       = "house"
}

array "south" {
  charger  = "main"
  tilt     = "35 deg"
  azimuth  = "180 deg"
  mounting = "roof_standoff"
  declared "fell_county" {
    outside_disconnect = true
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
