site {
  place = "boat