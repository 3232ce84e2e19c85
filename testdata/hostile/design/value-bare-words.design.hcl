design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
array "s" {
  mounting = open_rack
  charger = main
}
bank "b" {
  matched = yes
  take_off = [diagonal]
}
