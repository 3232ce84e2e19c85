# The panel of both roofs. All makes are invented.

panel "acacia-450" {
  technology         = "mono_si"
  cells              = 72 # 144 half cells are wired as 72 in series
  pmax               = "450 W"
  voc                = "49.6 V"
  isc                = "11.55 A"
  isc_bifacial       = "12.2 A" # with light from behind, off the pale roof
  vmp                = "41.5 V" # 41.5 V x 10.85 A = 450 W
  imp                = "10.85 A"
  temp_voc           = "-0.27 %/K"
  temp_isc           = "0.046 %/K"
  temp_pmax          = "-0.35 %/K"
  noct               = "44 degC"
  tolerance          = "3 %"
  max_system_voltage = "1500 V"
  max_series_fuse    = "20 A"
  bypass_diodes      = 3
  connector          = "kopje-4"
  length             = "2094 mm"
  width              = "1038 mm"
  mass               = "23.5 kg"
}
