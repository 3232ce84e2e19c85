# expect: breaks vehicle.auxiliary_battery on bank.house

site {
  latitude  = "47 deg"
  longitude = "8 deg"
  elevation = "950 m"
  coldest   = "-20 degC"
  hottest   = "30 degC"
  place     = "vehicle"
  declared "vehicle" {
    standard = "en_1648"
  }
}

# Two in parallel: 50 Ah.
battery "bog-12" {
  chemistry             = "flooded"
  nominal               = "12 V"
  capacity              = "25 Ah"
  capacity_rate         = "20 h"
  cells                 = 6
  absorption_min        = "14.4 V"
  absorption_max        = "14.8 V"
  float_min             = "13.2 V"
  float_max             = "13.5 V"
  equalize_max          = "15.5 V"
  charge_current_max    = "45 A"
  discharge_current_max = "110 A"
  discharge_voltage_min = "11.0 V"
  charge_above          = "-20 degC"
  charge_below          = "50 degC"
  discharge_above       = "-20 degC"
  usable                = "50 %"
  round_trip            = "85 %"
  short_circuit_current = "2 kA"
  series_max            = 4
  parallel_max          = 4
}
