design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
panel "slate" {
  voc = "0x25 V"
  isc = "1_0 A"
  vmp = "1p4 V"
  imp = "1..2 A"
  pmax = "--5 W"
  noct = "+-5 degC"
}
