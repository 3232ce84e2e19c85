site {
  place = "${boat
}
