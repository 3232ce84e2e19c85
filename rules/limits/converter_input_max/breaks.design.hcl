# expect: breaks limits.converter_input_max on supply.twelve

converter "rush-20" {
  input_min  = "18 V"
  input_max  = "28 V"
  output     = "12.5 V"
  current    = "20 A"
  efficiency = "93 %"
  idle       = "1 W"
  isolated   = false
}
