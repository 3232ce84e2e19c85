design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
waiver "a.b" {
  on = ["x"]
  reason = "r"
  approved_by = "a"
  expires = "2027-02-30"
}
waiver "a.c" {
  on = []
  reason = ""
  approved_by = "a"
  expires = "1.4.2027"
}
