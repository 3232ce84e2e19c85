design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
panel "slate" {
  temp_voc = "−0.26 %/K"
  noct = "45 °C"
}
