site {
  place = “boat”
}
