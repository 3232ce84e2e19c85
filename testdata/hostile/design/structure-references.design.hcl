design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
bank "house" {
  battery = "fel-200"
}
battery "fell-200" {}
charger "main" {
  bank = "hose"
  controller = "fell-200"
}
load "l" {
  from = "bank.hous"
}
load "m" {
  from = "bank"
}
load "n" {
  from = "load.l"
}
load "o" {
  from = ""
}
