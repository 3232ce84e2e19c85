design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
panel "slate" {
  voc = "1e400 V"
  isc = "1e-400 A"
  vmp = "1e999999 V"
  imp = "1e10000000 A"
  pmax = "4e2 W"
}
