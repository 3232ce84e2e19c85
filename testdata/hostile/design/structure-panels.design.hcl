design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
panel "slate" {}
array "s" {
  string "a" {
    panels = {}
  }
  string "b" {
    panels = { slate = 0 }
  }
  string "c" {
    panels = { slate = -1 }
  }
  string "d" {
    panels = { slate = 1.5 }
  }
  string "e" {
    panels = { slat = 1 }
  }
  string "f" {
    panels = ["slate"]
  }
  string "g" {
    panels = { slate = "2" }
  }
}
