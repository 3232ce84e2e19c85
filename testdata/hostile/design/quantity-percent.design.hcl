design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
array "s" {
  losses = 0.03
}
array "t" {
  losses = 3
}
array "u" {
  losses = "3"
}
array "v" {
  losses = "300 %"
}
