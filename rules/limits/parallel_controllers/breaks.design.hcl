# expect: breaks limits.parallel_controllers on charger.main
# expect: breaks limits.parallel_controllers on charger.second

charger "second" {
  controller = "reed-70"
  bank       = "house"
  hottest    = "35 degC"
  clearance  = "150 mm"
  over_bank  = false
  settings {
    bank_voltage             = "24 V"
    charge_current           = "60 A"
    absorption               = "28.4 V"
    float                    = "27.0 V"
    equalize                 = false
    temperature_compensation = "0 mV/K"
    cold_charge_cutoff       = "5 degC"
    bank_temperature_sensor  = true
    passcode_changed         = true
    locked                   = true
  }
  cable_run {
    size       = "25 mm2"
    length     = "1.5 m"
    insulation = "90 degC"
    voltage    = "600 V"
    ampacity   = "110 A"
    ambient    = "35 degC"
  }
  breaker {
    rating     = "100 A"
    voltage    = "80 V"
    interrupts = "10 kA"
    dc_rated   = true
    polarized  = false
    distance   = "0.2 m"
  }
}

array "west" {
  charger  = "second"
  tilt     = "45 deg"
  azimuth  = "180 deg"
  mounting = "open_rack"
  string "a" {
    panels   = { "fen-200" = 3 }
    parallel = 3
    cable_run {
      size       = "4 mm2"
      length     = "6 m"
      insulation = "120 degC"
      voltage    = "1500 V"
      ampacity   = "40 A"
      ambient    = "45 degC"
      connector  = "heron-4"
    }
    fuse {
      class      = "gPV"
      rating     = "20 A"
      voltage    = "1000 V"
      interrupts = "10 kA"
      dc_rated   = true
    }
  }
  cable_run {
    size       = "10 mm2"
    length     = "12 m"
    insulation = "90 degC"
    voltage    = "1000 V"
    ampacity   = "60 A"
    ambient    = "40 degC"
  }
  breaker {
    rating     = "40 A"
    voltage    = "250 V"
    interrupts = "6 kA"
    dc_rated   = true
    polarized  = false
    poles      = 2
  }
  disconnect {
    rating     = "63 A"
    voltage    = "250 V"
    dc_rated   = true
    load_break = true
    poles      = 2
  }
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
  parallel_max         = 1
  common               = "negative"
  isolated             = false
  load_current_max     = "20 A"
  compensation_min     = "-8 mV/K"
  compensation_max     = "0 mV/K"
  wakes_empty_bank     = true
  survives_bank_loss   = true
}
