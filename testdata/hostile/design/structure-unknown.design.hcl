design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
panle "slate" {}
panel "dusk" {
  vco = "37 V"
  voltage_open = "37 V"
}
