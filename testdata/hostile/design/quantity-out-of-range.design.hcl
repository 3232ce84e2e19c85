design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
panel "slate" {
  voc = "37.4 kV"
  isc = "-9 A"
  vmp = "200.0001 V"
  imp = "0 A"
}
