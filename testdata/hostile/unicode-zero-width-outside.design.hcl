site {
  pl​ace = "boat"
}
