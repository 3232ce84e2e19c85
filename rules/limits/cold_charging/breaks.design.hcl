# expect: breaks limits.cold_charging on charger.main

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

charger "main" {
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
    cold_charge_cutoff       = "-10 degC"
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
