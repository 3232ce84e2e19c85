# Panels in the yard. Invented, like all parts here: their figures are such as their
# kind has.

panel "bluff-330" {
  pmax               = "330 W"
  voc                = "40.5 V"
  isc                = "10.2 A"
  vmp                = "33.9 V"
  imp                = "9.74 A"
  temp_voc           = "-0.28 %/K"
  temp_isc           = "0.045 %/K"
  temp_pmax          = "-0.34 %/K"
  noct               = "45 degC"
  cells              = 60
  technology         = "mono_si"
  tolerance          = "3 %"
  bypass_diodes      = 3
  max_system_voltage = "1000 V"
  max_series_fuse    = "20 A"
  connector          = "plover-4"
}
