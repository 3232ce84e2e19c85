site {
  place = "bo\at"
  weather = "\u12"
  hottest = "\x41"
  coldest = "\r"
  mounting = "\é"
}
