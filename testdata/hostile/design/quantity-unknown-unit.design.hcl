design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
panel "slate" {
  voc = "37 Volts"
  isc = "9 Amps"
  pmax = "400 w"
  noct = "45 C"
}
