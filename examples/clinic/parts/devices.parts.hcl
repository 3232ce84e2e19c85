controller "dune-60" {
  kind                 = "mppt"
  pv_voltage_max       = "200 V"
  pv_voltage_max_25    = "200 V"
  mppt_voltage_min     = "60 V"
  mppt_voltage_max     = "180 V"
  pv_short_circuit_max = "40 A"
  pv_current_max       = "35 A"
  pv_power_max         = "3600 W"
  pv_backfeed_max      = "0 A"
  charge_current_max   = "60 A"
  bank_voltages        = ["24 V", "48 V"]
  start_above_bank     = "5 V"
  run_above_bank       = "1 V"
  overpanel_max        = "130 %"
  efficiency           = "97.5 %"
  idle                 = "2 W"
  full_power_to        = "45 degC"
  derate               = "2 %/K"
  altitude_max         = "3000 m"
  clearance_min        = "200 mm"
  pv_inputs            = 1
  parallel_max         = 6
  common               = "negative"
  isolated             = false
  compensation_min     = "-8 mV/K"
  compensation_max     = "0 mV/K"
  wakes_empty_bank     = true
  survives_bank_loss   = true
}

battery "delta-100" {
  chemistry             = "lifepo4"
  nominal               = "51.2 V"
  cells                 = 16
  capacity              = "100 Ah"
  capacity_rate         = "5 h"
  absorption_min        = "56.0 V"
  absorption_max        = "58.4 V"
  float_min             = "53.6 V"
  float_max             = "55.2 V"
  charge_current_max    = "60 A"
  discharge_current_max = "100 A"
  discharge_voltage_min = "41.6 V"
  charge_above          = "0 degC"
  charge_below          = "50 degC"
  discharge_above       = "-20 degC"
  usable                = "90 %"
  round_trip            = "94 %"
  short_circuit_current = "4.0 kA"
  series_max            = 1
  parallel_max          = 8
  heater                = false
  bms {
    charge_cutoff      = "80 A"
    discharge_cutoff   = "120 A"
    over_voltage       = "59.2 V"
    under_voltage      = "40.0 V"
    cold_charge_cutoff = "0 degC"
    precharge          = true
  }
}

# The same cells behind a smaller management system.
battery "delta-100-lean" {
  chemistry             = "lifepo4"
  nominal               = "51.2 V"
  cells                 = 16
  capacity              = "100 Ah"
  capacity_rate         = "5 h"
  absorption_min        = "56.0 V"
  absorption_max        = "58.4 V"
  float_min             = "53.6 V"
  float_max             = "55.2 V"
  charge_current_max    = "30 A"
  discharge_current_max = "100 A"
  discharge_voltage_min = "41.6 V"
  charge_above          = "0 degC"
  charge_below          = "50 degC"
  discharge_above       = "-20 degC"
  usable                = "90 %"
  round_trip            = "94 %"
  short_circuit_current = "4.0 kA"
  series_max            = 1
  parallel_max          = 8
  heater                = false
  bms {
    charge_cutoff      = "30 A"
    discharge_cutoff   = "120 A"
    over_voltage       = "59.2 V"
    under_voltage      = "40.0 V"
    cold_charge_cutoff = "0 degC"
    precharge          = true
  }
}

inverter "savanna-3000" {
  dc_min             = "42 V"
  dc_max             = "64 V"
  continuous         = "3000 W"
  surge              = "6000 W"
  surge_time         = "5 s"
  efficiency         = "93 %"
  idle               = "18 W"
  isolated           = true
  charge_current_max = "0 A" # it only inverts
  full_power_to      = "45 degC"
  ac_voltage         = "230 V"
}

converter "rill-24" {
  input_min  = "36 V"
  input_max  = "64 V"
  output     = "24.5 V"
  current    = "10 A"
  efficiency = "90 %"
  idle       = "1 W"
  isolated   = true
}
