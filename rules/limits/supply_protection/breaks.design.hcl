# expect: breaks limits.supply_protection on supply.twelve

supply "twelve" {
  converter = "rush-20"
  from      = "bank.house"
  cable_run {
    size       = "4 mm2"
    length     = "1.5 m"
    insulation = "90 degC"
    voltage    = "600 V"
    ampacity   = "35 A"
    ambient    = "35 degC"
  }
}
