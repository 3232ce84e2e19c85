design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
panel "slate" {}
array "s" {
  string "a" {
    panels = { "slate" = 2, "slate" = 3 }
  }
  string "b" {
    panels = { slate = 2, "sl\u0061te" = 3 }
  }
}
