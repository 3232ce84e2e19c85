string "a" {
  panels = { "slate-410" : 2, dusk = 1 }
}
