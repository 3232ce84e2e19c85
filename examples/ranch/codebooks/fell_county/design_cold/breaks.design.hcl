# expect: breaks fell_county.design_cold on site

# As the nearest weather station has it.
site {
  coldest = "-23 degC"
  hottest = "36 degC"
  place   = "building"
}
