site {
  place = "$${boat}"
  weather = "%%{if}"
}
