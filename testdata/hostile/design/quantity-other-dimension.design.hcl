design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
panel "slate" {
  voc = "9 A"
  isc = "37 V"
  pmax = "400 Wh"
  noct = "45 K"
  temp_voc = "-0.3 %"
}
