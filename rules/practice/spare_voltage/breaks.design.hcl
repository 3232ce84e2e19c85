# expect: breaks practice.spare_voltage on pv_input.main.1

controller "reed-70" {
  kind                 = "mppt"
  pv_voltage_max       = "83 V"
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
