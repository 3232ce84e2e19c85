# expect: breaks limits.inverter_charger on ac_output.cabin

inverter "sedge-1500" {
  dc_min             = "20 V"
  dc_max             = "33 V"
  continuous         = "1500 W"
  surge              = "3000 W"
  surge_time         = "5 s"
  efficiency         = "92 %"
  idle               = "12 W"
  isolated           = true
  charge_current_max = "35 A"
  full_power_to      = "40 degC"
  ac_voltage         = "230 V"
}

bank "shed" {
  battery  = "peat-100"
  series   = 1
  parallel = 1
}

charge_source "engine" {
  bank           = "shed"
  charge_current = "40 A"
  charge_voltage = "28.6 V"
  together       = true
}
