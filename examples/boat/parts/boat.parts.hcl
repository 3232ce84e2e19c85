# Data sheets for the boat. All makes are invented.

panel "lark-120" { # a small stiff panel for a cabin roof
  technology         = "mono_si"
  cells              = 36
  pmax               = "120 W"
  voc                = "23.0 V"
  isc                = "6.62 A"
  vmp                = "19.3 V" # 19.3 V x 6.22 A = 120 W
  imp                = "6.22 A"
  temp_voc           = "-0.29 %/K"
  temp_isc           = "0.05 %/K"
  temp_pmax          = "-0.38 %/K"
  nmot               = "46 degC" # measured under load; its sheet gives no NOCT
  tolerance          = "3 %"
  max_system_voltage = "600 V"
  max_series_fuse    = "15 A"
  bypass_diodes      = 2
  connector          = "weir-2"
  length             = "1180 mm"
  width              = "540 mm"
  mass               = "7.4 kg"
}

controller "reed-20" {
  kind                 = "mppt"
  pv_voltage_max       = "75 V"
  pv_voltage_max_25    = "75 V"
  mppt_voltage_min     = "15 V"
  mppt_voltage_max     = "70 V"
  pv_short_circuit_max = "20 A"
  pv_current_max       = "18 A"
  pv_power_max         = "290 W" # at 12 V
  pv_backfeed_max      = "0 A"
  charge_current_max   = "20 A"
  bank_voltages        = ["12 V", "24 V"]
  start_above_bank     = "5 V"
  run_above_bank       = "1 V"
  overpanel_max        = "120 %"
  efficiency           = "96 %"
  idle                 = "0.5 W"
  full_power_to        = "40 degC"
  derate               = "2.5 %/K"
  altitude_max         = "2000 m"
  clearance_min        = "100 mm"
  pv_inputs            = 1
  parallel_max         = 4
  common               = "negative"
  isolated             = false
  load_current_max     = "20 A" # its load terminals: lights and pumps, no inverter
  compensation_min     = "-6 mV/K"
  compensation_max     = "0 mV/K"
  wakes_empty_bank     = true
  survives_bank_loss   = true
}

battery "moss-110" { # sealed lead, its acid held in glass mat
  chemistry             = "agm"
  nominal               = "12 V"
  cells                 = 6
  capacity              = "110 Ah"
  capacity_rate         = "20 h"
  absorption_min        = "14.4 V"
  absorption_max        = "14.7 V"
  float_min             = "13.5 V"
  float_max             = "13.8 V"
  charge_current_max    = "38 A"
  discharge_current_max = "110 A"
  discharge_voltage_min = "10.8 V"
  charge_above          = "-15 degC"
  charge_below          = "50 degC"
  discharge_above       = "-20 degC"
  usable                = "50 %"
  round_trip            = "85 %"
  peukert               = 1.1
  internal_resistance   = "5.5 mohm" # 12 V / 5.5 mohm = 2.2 kA in a short circuit
  series_max            = 4
  parallel_max          = 4
  heater                = false
}

inverter "wherry-600" {
  dc_min             = "10.5 V"
  dc_max             = "16 V"
  continuous         = "600 W"
  surge              = "1200 W"
  surge_time         = "3 s"
  efficiency         = "90 %"
  idle               = "6 W"
  isolated           = true
  charge_current_max = "0 A" # it only inverts
  full_power_to      = "40 degC"
  ac_voltage         = "230 V"
}

fuse "t-150" {
  class            = "T"
  rating           = "150 A"
  voltage          = "125 V"
  interrupts       = "20 kA"
  dc_rated         = true
  continuous_rated = false
}

fuse "stud-100" { # sits on the battery's own stud, no cable before it
  class            = "MRBF"
  rating           = "100 A"
  voltage          = "58 V"
  interrupts       = "10 kA"
  dc_rated         = true
  continuous_rated = false
}

fuse "stud-80" {
  class            = "MRBF"
  rating           = "80 A"
  voltage          = "58 V"
  interrupts       = "10 kA"
  dc_rated         = true
  continuous_rated = false
}

fuse "stud-60" {
  class            = "MRBF"
  rating           = "60 A"
  voltage          = "58 V"
  interrupts       = "10 kA"
  dc_rated         = true
  continuous_rated = false
}

fuse "t-15" {
  class            = "T"
  rating           = "15 A"
  voltage          = "125 V"
  interrupts       = "20 kA"
  dc_rated         = true
  continuous_rated = false
}

breaker "lock-30" {
  rating           = "30 A"
  voltage          = "48 V"
  interrupts       = "10 kA"
  dc_rated         = true
  polarized        = false
  poles            = 1
  continuous_rated = false
}

breaker "lock-15" {
  rating           = "15 A"
  voltage          = "150 V"
  interrupts       = "5 kA"
  dc_rated         = true
  polarized        = false
  poles            = 2
  continuous_rated = false
}

# On the water every strand is tinned and the insulation bears engine heat. The
# ampacity is the maker's, for two laid together in an engine's space of 60 degC.

cable "tinned-4" {
  size       = "4 mm2"
  material   = "Cu"
  strand     = "class_5"
  tinned     = true
  insulation = "105 degC"
  voltage    = "600 V"
  ampacity   = "32 A"
}

cable "tinned-10" {
  size       = "10 mm2"
  material   = "Cu"
  strand     = "class_5"
  tinned     = true
  insulation = "105 degC"
  voltage    = "600 V"
  ampacity   = "60 A"
}

cable "tinned-25" {
  size       = "25 mm2"
  material   = "Cu"
  strand     = "class_5"
  tinned     = true
  insulation = "105 degC"
  voltage    = "600 V"
  ampacity   = "105 A"
}

cable "tinned-35" {
  size       = "35 mm2"
  material   = "Cu"
  strand     = "class_5"
  tinned     = true
  insulation = "105 degC"
  voltage    = "600 V"
  ampacity   = "130 A"
}

cable "tinned-70" {
  size       = "70 mm2"
  material   = "Cu"
  strand     = "class_5"
  tinned     = true
  insulation = "105 degC"
  voltage    = "600 V"
  ampacity   = "210 A"
}
