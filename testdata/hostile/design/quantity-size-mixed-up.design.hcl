design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
cable "c" {
  size = "6 mm"
}
cable "d" {
  size = "10 AWG2"
}
cable "e" {
  size = "5/0 AWG"
}
cable "f" {
  size = "-4 AWG"
}
