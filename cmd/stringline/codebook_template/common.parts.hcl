# Invented parts with figures such as their kind has: no design that is built
# rests on them.

panel "fen-200" {
  pmax     = "200 W"
  voc      = "24.3 V"
  isc      = "10.4 A"
  vmp      = "20.4 V"
  imp      = "9.8 A"
  temp_voc = "-0.26 %/K"
  cells    = 36
}

controller "reed-70" {
  kind               = "mppt"
  pv_voltage_max     = "150 V"
  pv_voltage_max_25  = "140 V"
  charge_current_max = "70 A"
}

battery "bog-12" {
  chemistry = "flooded"
  nominal   = "12 V"
  capacity  = "225 Ah"
  cells     = 6
}
