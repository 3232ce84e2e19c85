# expect: breaks iec.array_device on array.south

array "south" {
  charger  = "main"
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
      ambient    = "45 degC"
      grouped    = 2
      method     = "surface"
      cores      = "single"
      connector  = "heron-4"
      declared "iec" {
        under_modules = true
      }
    }
    fuse {
      class      = "gPV"
      rating     = "16 A"
      voltage    = "1000 V"
      interrupts = "10 kA"
      dc_rated   = true
    }
    declared "iec" {
      class_two               = true
      insulation_resistance   = "4 Mohm"
      insulation_test_voltage = "250 V"
    }
  }
  cable_run {
    size       = "16 mm2"
    length     = "12 m"
    insulation = "90 degC"
    voltage    = "1000 V"
    ambient    = "45 degC"
    grouped    = 2
    method     = "conduit"
    cores      = "single"
    declared "iec" {
      under_modules = false
    }
  }
  disconnect {
    rating     = "63 A"
    voltage    = "250 V"
    dc_rated   = true
    load_break = true
    poles      = 2
    declared "iec" {
      category = "PV2"
    }
  }
  declared "iec" {
    spd_ucpv = "150 V"
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
  pv_backfeed_max      = "35 A"
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
