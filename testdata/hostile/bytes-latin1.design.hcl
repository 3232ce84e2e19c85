site {
  coldest = "-27 °C"
  hottest = "29 °C"
}
