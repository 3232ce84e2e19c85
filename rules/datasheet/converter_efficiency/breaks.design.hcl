# expect: breaks datasheet.converter_efficiency on converter.rush-20

converter "rush-20" {
  input_min  = "18 V"
  input_max  = "35 V"
  output     = "12.5 V"
  current    = "20 A"
  efficiency = "0.97 %"
  idle       = "1 W"
  isolated   = false
}
