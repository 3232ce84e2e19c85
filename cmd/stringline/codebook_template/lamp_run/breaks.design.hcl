# expect: breaks bookname.lamp_run on cable_run.load.lamps
# expect: does_not_apply bookname.lamp_run on cable_run.array.south

load "lamps" {
  from  = "bank.house"
  power = "60 W"
  cable_run {
    size   = "1.5 mm2"
    length = "12 m"
  }
}

array "south" {
  charger = "main"
  string "a" {
    panels = { "fen-200" = 4 }
  }
  cable_run {
    size   = "10 mm2"
    length = "40 m"
  }
}
