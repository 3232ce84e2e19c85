design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
bank "hоuse" {}
bank "house" {}
panel "slаte" {}
