# expect: breaks practice.oversizing on charger.main

panel "fen-200" {
  pmax               = "300 W"
  voc                = "24.3 V"
  isc                = "15.6 A"
  vmp                = "20.4 V"
  imp                = "14.7 A"
  temp_voc           = "-0.26 %/K"
  temp_isc           = "0.045 %/K"
  temp_pmax          = "-0.34 %/K"
  noct               = "45 degC"
  cells              = 36
  technology         = "mono_si"
  tolerance          = "3 %"
  bypass_diodes      = 2
  max_system_voltage = "1000 V"
  max_series_fuse    = "20 A"
  connector          = "heron-4"
}
