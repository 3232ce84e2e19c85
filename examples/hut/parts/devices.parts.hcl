# Two controllers of one family. They differ in the voltage that the panels may
# ever reach. Their sheets state one limit for every temperature.

controller "ridge-85" {
  kind                 = "mppt"
  pv_voltage_max       = "150 V" # absolute: above it the input is destroyed
  mppt_voltage_min     = "30 V"
  mppt_voltage_max     = "145 V"
  pv_short_circuit_max = "60 A"
  pv_current_max       = "50 A"
  pv_power_max         = "2650 W" # on a 24 V bank
  pv_backfeed_max      = "0 A"    # a diode in the input keeps the bank out of the array
  charge_current_max   = "85 A"
  bank_voltages        = ["12 V", "24 V", "48 V"]
  start_above_bank     = "5 V"
  run_above_bank       = "1 V"
  overpanel_max        = "130 %"
  efficiency           = "97 %"
  idle                 = "1.5 W"
  full_power_to        = "40 degC"
  derate               = "2 %/K"
  altitude_max         = "3000 m"
  clearance_min        = "150 mm"
  pv_inputs            = 1
  parallel_max         = 8
  common               = "negative"
  isolated             = false
  compensation_min     = "-8 mV/K"
  compensation_max     = "0 mV/K"
  wakes_empty_bank     = true
  survives_bank_loss   = true
}

controller "ford-85" {
  kind                 = "mppt"
  pv_voltage_max       = "75 V"
  mppt_voltage_min     = "30 V"
  mppt_voltage_max     = "72 V"
  pv_short_circuit_max = "60 A"
  pv_current_max       = "50 A"
  pv_power_max         = "2650 W" # on a 24 V bank
  pv_backfeed_max      = "0 A"
  charge_current_max   = "85 A"
  bank_voltages        = ["12 V", "24 V"]
  start_above_bank     = "5 V"
  run_above_bank       = "1 V"
  overpanel_max        = "130 %"
  efficiency           = "97 %"
  idle                 = "1.5 W"
  full_power_to        = "40 degC"
  derate               = "2 %/K"
  altitude_max         = "3000 m"
  clearance_min        = "150 mm"
  pv_inputs            = 1
  parallel_max         = 8
  common               = "negative"
  isolated             = false
  compensation_min     = "-8 mV/K"
  compensation_max     = "0 mV/K"
  wakes_empty_bank     = true
  survives_bank_loss   = true
}

battery "fell-200" {
  chemistry             = "lifepo4"
  nominal               = "25.6 V"
  cells                 = 8 # in series, 3.2 V each
  capacity              = "200 Ah"
  capacity_rate         = "5 h"
  absorption_min        = "28.0 V"
  absorption_max        = "29.2 V" # 3.65 V a cell, the most this chemistry bears
  float_min             = "26.8 V"
  float_max             = "27.6 V"
  charge_current_max    = "100 A"
  discharge_current_max = "150 A"
  discharge_voltage_min = "20.8 V"
  charge_above          = "0 degC" # below freezing, charging plates metal: never
  charge_below          = "45 degC"
  discharge_above       = "-20 degC"
  usable                = "90 %"
  round_trip            = "94 %"
  short_circuit_current = "4.6 kA"
  series_max            = 2
  parallel_max          = 4
  heater                = false
  bms {
    charge_cutoff      = "120 A"
    discharge_cutoff   = "200 A"
    over_voltage       = "29.6 V"
    under_voltage      = "20.0 V"
    cold_charge_cutoff = "0 degC"
    precharge          = true # fills an inverter's capacitors gently
  }
}

inverter "moor-2000" {
  dc_min             = "21 V"
  dc_max             = "32 V"
  continuous         = "2000 W"
  surge              = "4000 W"
  surge_time         = "5 s"
  efficiency         = "92 %"
  idle               = "14 W"
  isolated           = true
  charge_current_max = "0 A" # it only inverts
  full_power_to      = "40 degC"
  ac_voltage         = "230 V"
}

converter "brook-20" {
  input_min  = "20 V"
  input_max  = "32 V"
  output     = "12.5 V"
  current    = "20 A"
  efficiency = "92 %"
  idle       = "1 W"
  isolated   = false
}
