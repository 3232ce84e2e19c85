# expect: breaks limits.converter_input_min on supply.twelve

converter "rush-20" {
  input_min  = "24 V"
  input_max  = "35 V"
  output     = "12.5 V"
  current    = "20 A"
  efficiency = "93 %"
  idle       = "1 W"
  isolated   = false
}
