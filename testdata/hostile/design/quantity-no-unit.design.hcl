design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
panel "slate" {
  voc = "12"
  isc = 9.5
  vmp = "V"
  imp = ""
  pmax = " "
}
