site {
  place = "boat
  hottest = "29 degC"
}
