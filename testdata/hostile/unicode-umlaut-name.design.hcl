site {
  größe = 1
}
