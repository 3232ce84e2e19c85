site {
  plаce = "boat"
  сoldest = "1 degC"
}
