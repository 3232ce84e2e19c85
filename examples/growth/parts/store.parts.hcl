# Everything on the farm's shelf. All makes are invented.

panel "shale-410" {
  technology         = "mono_si"
  cells              = 54
  pmax               = "410 W"
  voc                = "37.4 V"
  isc                = "13.95 A"
  vmp                = "31.4 V"
  imp                = "13.06 A"
  temp_voc           = "-0.26 %/K"
  temp_isc           = "0.045 %/K"
  temp_pmax          = "-0.34 %/K"
  noct               = "45 degC"
  tolerance          = "3 %"
  max_system_voltage = "1500 V"
  max_series_fuse    = "25 A"
  bypass_diodes      = 3
  connector          = "scarp-4"
  length             = "1722 mm"
  width              = "1134 mm"
  mass               = "21.5 kg"
}

controller "stair-60" { # it stays through all three stages: 60 A at any voltage
  kind                 = "mppt"
  pv_voltage_max       = "150 V"
  pv_voltage_max_25    = "150 V"
  mppt_voltage_min     = "16 V"
  mppt_voltage_max     = "145 V"
  pv_short_circuit_max = "60 A"
  pv_current_max       = "50 A"
  pv_power_max         = "3740 W" # on a 48 V bank; its share of 130 % binds below that
  pv_backfeed_max      = "0 A"
  charge_current_max   = "60 A"
  bank_voltages        = ["12 V", "24 V", "48 V"]
  start_above_bank     = "5 V"
  run_above_bank       = "1 V"
  overpanel_max        = "130 %"
  efficiency           = "97 %"
  idle                 = "1.2 W"
  full_power_to        = "40 degC"
  derate               = "2 %/K"
  altitude_max         = "2000 m"
  clearance_min        = "150 mm"
  pv_inputs            = 1
  parallel_max         = 4
  common               = "negative"
  isolated             = false
  compensation_min     = "-8 mV/K"
  compensation_max     = "0 mV/K"
  wakes_empty_bank     = true
  survives_bank_loss   = true
}

battery "pebble-100" {
  chemistry             = "lifepo4"
  nominal               = "12.8 V"
  cells                 = 4
  capacity              = "100 Ah"
  capacity_rate         = "5 h"
  absorption_min        = "14.0 V"
  absorption_max        = "14.6 V"
  float_min             = "13.4 V"
  float_max             = "13.8 V"
  charge_current_max    = "80 A"
  discharge_current_max = "100 A"
  discharge_voltage_min = "10.4 V"
  charge_above          = "0 degC"
  charge_below          = "45 degC"
  discharge_above       = "-20 degC"
  usable                = "90 %"
  round_trip            = "94 %"
  short_circuit_current = "2.5 kA"
  series_max            = 4
  parallel_max          = 4
  heater                = false
  bms {
    charge_cutoff      = "100 A"
    discharge_cutoff   = "150 A"
    over_voltage       = "14.8 V"
    under_voltage      = "10.0 V"
    cold_charge_cutoff = "0 degC"
    precharge          = true
  }
}

# An inverter is bought anew at each stage: its DC side fits one voltage only.

inverter "tread-12" {
  dc_min             = "10.5 V"
  dc_max             = "16 V"
  continuous         = "800 W"
  surge              = "1600 W"
  surge_time         = "5 s"
  efficiency         = "91 %"
  idle               = "8 W"
  isolated           = true
  charge_current_max = "0 A" # it only inverts
  full_power_to      = "40 degC"
  ac_voltage         = "230 V"
}

inverter "tread-24" {
  dc_min             = "21 V"
  dc_max             = "32 V"
  continuous         = "1600 W"
  surge              = "3200 W"
  surge_time         = "5 s"
  efficiency         = "91 %"
  idle               = "11 W"
  isolated           = true
  charge_current_max = "0 A" # it only inverts
  full_power_to      = "40 degC"
  ac_voltage         = "230 V"
}

inverter "tread-48" {
  dc_min             = "42 V"
  dc_max             = "64 V"
  continuous         = "3200 W"
  surge              = "6400 W"
  surge_time         = "5 s"
  efficiency         = "91 %"
  idle               = "15 W"
  isolated           = true
  charge_current_max = "0 A" # it only inverts
  full_power_to      = "40 degC"
  ac_voltage         = "230 V"
}

converter "spring-24" { # from 24 V down to the old 12 V lamps
  input_min  = "20 V"
  input_max  = "32 V"
  output     = "12.5 V"
  current    = "8 A"
  efficiency = "92 %"
  idle       = "0.8 W"
  isolated   = false
}

converter "spring-48" {
  input_min  = "40 V"
  input_max  = "62 V"
  output     = "12.5 V"
  current    = "8 A"
  efficiency = "90 %"
  idle       = "1 W"
  isolated   = false
}

fuse "t-125" {
  class            = "T"
  rating           = "125 A"
  voltage          = "125 V"
  interrupts       = "20 kA"
  dc_rated         = true
  continuous_rated = false
}

fuse "t-100" {
  class            = "T"
  rating           = "100 A"
  voltage          = "125 V"
  interrupts       = "20 kA"
  dc_rated         = true
  continuous_rated = false
}

fuse "t-10" {
  class            = "T"
  rating           = "10 A"
  voltage          = "125 V"
  interrupts       = "20 kA"
  dc_rated         = true
  continuous_rated = false
}

fuse "pv-25" {
  class            = "gPV"
  rating           = "25 A"
  voltage          = "1000 V"
  interrupts       = "30 kA"
  dc_rated         = true
  continuous_rated = false
}

breaker "latch-80" { # on the bank's side, chosen for 48 V from the first day
  rating           = "80 A"
  voltage          = "80 V"
  interrupts       = "10 kA"
  dc_rated         = true
  polarized        = false
  poles            = 1
  continuous_rated = false
}

breaker "latch-80-pv" {
  rating           = "80 A"
  voltage          = "250 V"
  interrupts       = "10 kA"
  dc_rated         = true
  polarized        = false
  poles            = 2
  continuous_rated = false
}

cable "ply-6" {
  size       = "6 mm2"
  material   = "Cu"
  strand     = "class_5"
  tinned     = true
  insulation = "90 degC"
  voltage    = "1000 V"
  ampacity   = "44 A"
}

cable "ply-35" {
  size       = "35 mm2"
  material   = "Cu"
  strand     = "class_5"
  tinned     = false
  insulation = "90 degC"
  voltage    = "1000 V"
  ampacity   = "130 A"
}

cable "ply-70" {
  size       = "70 mm2"
  material   = "Cu"
  strand     = "class_5"
  tinned     = false
  insulation = "90 degC"
  voltage    = "600 V"
  ampacity   = "210 A"
}
