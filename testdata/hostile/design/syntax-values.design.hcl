design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
bank "a" {
  series =
  parallel = 1 2
  battery "x"
  = 5
}
