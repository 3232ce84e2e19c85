# expect: breaks datasheet.panel_temp_voc on panel.fen-200

panel "fen-200" {
  pmax               = "200 W"
  voc                = "24.3 V"
  isc                = "10.4 A"
  vmp                = "20.4 V"
  imp                = "9.8 A"
  temp_voc           = "0.26 %/K"
  temp_isc           = "0.045 %/K"
  temp_pmax          = "-0.34 %/K"
  noct               = "45 degC"
  cells              = 36
  technology         = "mono_si"
  max_system_voltage = "1000 V"
  max_series_fuse    = "20 A"
  connector          = "heron-4"
}
