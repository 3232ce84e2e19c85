design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
bank "a" {
  charger "c" {}
  site {}
}
string "s" {}
absorption = "5 V"
