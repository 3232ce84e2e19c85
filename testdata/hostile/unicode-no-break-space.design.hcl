site {
  place = "boat"
}
