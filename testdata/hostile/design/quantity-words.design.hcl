design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
panel "slate" {
  voc = "inf"
  isc = "nan A"
  vmp = "Infinity V"
  imp = "-inf A"
  pmax = "1p4"
}
