# expect: breaks datasheet.inverter_surge on inverter.sedge-1500

inverter "sedge-1500" {
  dc_min        = "20 V"
  dc_max        = "33 V"
  continuous    = "3000 W"
  surge         = "1500 W"
  surge_time    = "5 s"
  efficiency    = "92 %"
  idle          = "12 W"
  isolated      = true
  full_power_to = "40 degC"
  ac_voltage    = "230 V"
}
