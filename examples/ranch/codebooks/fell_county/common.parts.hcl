panel "bluff-330" {
  pmax       = "330 W"
  voc        = "40.5 V"
  isc        = "10.2 A"
  vmp        = "33.9 V"
  imp        = "9.74 A"
  temp_voc   = "-0.28 %/K"
  temp_isc   = "0.045 %/K"
  temp_pmax  = "-0.34 %/K"
  noct       = "45 degC"
  cells      = 60
  technology = "mono_si"
}

controller "gully-60" {
  kind               = "mppt"
  pv_voltage_max     = "200 V"
  charge_current_max = "60 A"
}

battery "bench-100" {
  chemistry = "lifepo4"
  nominal   = "51.2 V"
  capacity  = "100 Ah"
  cells     = 16
}
