design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
panel "slate" {
  voc = ["37 V"]
  isc = { a = "9 A" }
  vmp = true
  imp = imp
  pmax = []
  cells = "60"
  technology = 5
}
