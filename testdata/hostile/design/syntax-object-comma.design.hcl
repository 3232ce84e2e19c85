design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
array "s" {
  string "a" {
    panels = { slate = 1 dusk = 2 }
  }
}
