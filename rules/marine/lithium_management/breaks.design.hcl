# expect: breaks marine.lithium_management on bank.house

battery "peat-100" {
  chemistry             = "lifepo4"
  nominal               = "25.6 V"
  capacity              = "100 Ah"
  capacity_rate         = "5 h"
  cells                 = 8
  absorption_min        = "28.0 V"
  absorption_max        = "28.8 V"
  float_min             = "26.6 V"
  float_max             = "27.2 V"
  charge_current_max    = "60 A"
  discharge_current_max = "100 A"
  discharge_voltage_min = "22.0 V"
  charge_above          = "0 degC"
  charge_below          = "45 degC"
  discharge_above       = "-20 degC"
  usable                = "90 %"
  round_trip            = "95 %"
  short_circuit_current = "2 kA"
  series_max            = 2
  parallel_max          = 4
  heater                = true
  bms {
    charge_cutoff      = "80 A"
    discharge_cutoff   = "120 A"
    over_voltage       = "29.2 V"
    under_voltage      = "20.0 V"
    cold_charge_cutoff = "-10 degC"
    precharge          = true
  }
}
