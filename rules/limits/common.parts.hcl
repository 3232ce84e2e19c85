# Invented parts. Their figures are such as their kind has.

panel "fen-200" {
  pmax               = "200 W"
  voc                = "24.3 V"
  isc                = "10.4 A"
  vmp                = "20.4 V"
  imp                = "9.8 A"
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

controller "reed-70" {
  kind                 = "mppt"
  pv_voltage_max       = "150 V"
  pv_voltage_max_25    = "140 V"
  mppt_voltage_min     = "30 V"
  mppt_voltage_max     = "120 V"
  pv_short_circuit_max = "50 A"
  pv_current_max       = "35 A"
  pv_power_max         = "2200 W"
  pv_backfeed_max      = "0 A"
  charge_current_max   = "70 A"
  bank_voltages        = ["12 V", "24 V", "48 V"]
  start_above_bank     = "5 V"
  run_above_bank       = "1 V"
  overpanel_max        = "130 %"
  efficiency           = "97 %"
  idle                 = "2 W"
  full_power_to        = "40 degC"
  derate               = "2 %/K"
  altitude_max         = "3000 m"
  clearance_min        = "100 mm"
  pv_inputs            = 1
  parallel_max         = 4
  common               = "negative"
  isolated             = false
  load_current_max     = "20 A"
  compensation_min     = "-8 mV/K"
  compensation_max     = "0 mV/K"
  wakes_empty_bank     = true
  survives_bank_loss   = true
}

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
    cold_charge_cutoff = "0 degC"
    precharge          = true
  }
}

inverter "sedge-1500" {
  dc_min             = "20 V"
  dc_max             = "33 V"
  continuous         = "1500 W"
  surge              = "3000 W"
  surge_time         = "5 s"
  efficiency         = "92 %"
  idle               = "12 W"
  isolated           = true
  full_power_to      = "40 degC"
  charge_current_max = "0 A"
  ac_voltage         = "230 V"
}

converter "rush-20" {
  input_min  = "18 V"
  input_max  = "35 V"
  output     = "12.5 V"
  current    = "20 A"
  efficiency = "93 %"
  idle       = "1 W"
  isolated   = false
}

# A lead battery, for the rules that only lead obeys.
battery "bog-12" {
  chemistry             = "flooded"
  nominal               = "12 V"
  capacity              = "225 Ah"
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
