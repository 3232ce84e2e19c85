# The system that the examples of this book share. An example of a rule names
# only the blocks that differ: one of the same kind and name replaces the one
# here whole.

design "Reed cabin" {
  revision = "A"
}

site {
  coldest = "-20 degC"
  hottest = "30 degC"
  place   = "building"
}

bank "house" {
  battery  = "bog-12"
  series   = 2
  parallel = 1
  coldest  = "0 degC"
  hottest  = "30 degC"
  declared "bookname" {
    vented = true
  }
}

charger "main" {
  controller = "reed-70"
  bank       = "house"
}

array "south" {
  charger = "main"
  string "a" {
    panels = { "fen-200" = 4 }
  }
}

load "lamps" {
  from  = "bank.house"
  power = "60 W"
  cable_run {
    size   = "2.5 mm2"
    length = "8 m"
  }
}
