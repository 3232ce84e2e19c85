design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
array "s" {
  mounting = "open-rack"
}
bank "b" {
  matched = "true"
  take_off = "DIAGONAL"
}
