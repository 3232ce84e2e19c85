# expect: breaks bookname.cold_spare on pv_input.main.1

array "south" {
  charger = "main"
  string "a" {
    panels = { "fen-200" = 6 }
  }
}
