site {
  coldest = "−27 degC"
}
