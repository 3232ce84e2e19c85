# Data sheets, word for word: the values at standard test conditions (1000 W/m2,
# cells at 25 degC) and how they move with temperature. All makes are invented.

panel "slate-410" {
  technology         = "mono_si"
  cells              = 54 # 108 half cells are wired as 54 in series
  pmax               = "410 W"
  voc                = "37.4 V" # no load: the voltage that kills controllers
  isc                = "13.95 A"
  vmp                = "31.4 V" # at best power: 31.4 V x 13.06 A = 410 W
  imp                = "13.06 A"
  temp_voc           = "-0.26 %/K" # colder means more volts
  temp_isc           = "0.045 %/K"
  temp_pmax          = "-0.34 %/K"
  noct               = "45 degC" # cell temperature at 800 W/m2 in 20 degC air
  tolerance          = "3 %"
  max_system_voltage = "1500 V"
  max_series_fuse    = "25 A" # the most that may be driven back through it
  bypass_diodes      = 3
  connector          = "tarn-4"
  length             = "1722 mm"
  width              = "1134 mm"
  mass               = "21.5 kg"
}

panel "dusk-335" {
  technology         = "mono_si"
  cells              = 54
  pmax               = "335 W"
  voc                = "36.9 V"
  isc                = "11.52 A"
  vmp                = "30.9 V" # 30.9 V x 10.85 A = 335 W
  imp                = "10.85 A"
  temp_voc           = "-0.27 %/K"
  temp_isc           = "0.048 %/K"
  temp_pmax          = "-0.35 %/K"
  noct               = "45 degC"
  tolerance          = "3 %"
  max_system_voltage = "1000 V"
  max_series_fuse    = "20 A"
  bypass_diodes      = 3
  connector          = "tarn-4"
  length             = "1690 mm"
  width              = "1046 mm"
  mass               = "18.4 kg"
}
