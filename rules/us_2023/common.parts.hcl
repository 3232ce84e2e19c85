# Invented parts. Their figures are such as their kind has.

panel "sage-330" {
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
  connector          = "heron-4"
}

controller "butte-60" {
  kind                 = "mppt"
  pv_voltage_max       = "200 V"
  pv_voltage_max_25    = "185 V"
  mppt_voltage_min     = "60 V"
  mppt_voltage_max     = "160 V"
  pv_short_circuit_max = "50 A"
  pv_current_max       = "40 A"
  pv_power_max         = "3600 W"
  pv_backfeed_max      = "0 A"
  charge_current_max   = "60 A"
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

battery "mesa-100" {
  chemistry             = "lifepo4"
  nominal               = "51.2 V"
  capacity              = "100 Ah"
  capacity_rate         = "5 h"
  cells                 = 16
  absorption_min        = "56.0 V"
  absorption_max        = "57.6 V"
  float_min             = "53.2 V"
  float_max             = "54.4 V"
  charge_current_max    = "60 A"
  discharge_current_max = "100 A"
  discharge_voltage_min = "44.0 V"
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
    over_voltage       = "58.4 V"
    under_voltage      = "40.0 V"
    cold_charge_cutoff = "0 degC"
    precharge          = true
  }
}

inverter "basin-2400" {
  dc_min             = "40 V"
  dc_max             = "66 V"
  continuous         = "2400 W"
  surge              = "4800 W"
  surge_time         = "5 s"
  efficiency         = "92 %"
  idle               = "15 W"
  isolated           = true
  full_power_to      = "40 degC"
  charge_current_max = "0 A"
  ac_voltage         = "120 V"
}

converter "gulch-20" {
  input_min  = "36 V"
  input_max  = "66 V"
  output     = "12.5 V"
  current    = "20 A"
  efficiency = "93 %"
  idle       = "1 W"
  isolated   = false
}

# A lead battery, for the rules that only lead obeys.
battery "playa-12" {
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
