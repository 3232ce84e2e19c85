design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
bank "a" {
  series = 1.5
  parallel = -1
}
bank "b" {
  series = 0
  parallel = 100000000000000000000000000000
}
