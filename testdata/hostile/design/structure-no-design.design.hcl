site {
  latitude = "46 deg"
}
