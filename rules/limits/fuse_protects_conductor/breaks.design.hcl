# expect: breaks limits.fuse_protects_conductor on protection.charger.main
# expect: breaks limits.fuse_protects_conductor on protection.supply.twelve
# expect: breaks limits.fuse_protects_conductor on protection.load.each

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
    rating     = "125 A"
    voltage    = "80 V"
    interrupts = "10 kA"
    dc_rated   = true
    polarized  = false
    distance   = "0.2 m"
  }
}

supply "twelve" {
  converter = "rush-20"
  from      = "bank.house"
  fuse {
    class      = "other"
    rating     = "20 A"
    voltage    = "58 V"
    interrupts = "10 kA"
    dc_rated   = true
    distance   = "0.2 m"
  }
}

# A name that looks like the fuses of a bank's strings.
load "each" {
  from          = "bank.house"
  power         = "60 W"
  surge         = "60 W"
  hours_per_day = 5
  voltage_min   = "21 V"
  voltage_max   = "30 V"
  cable_run {
    size       = "2.5 mm2"
    length     = "8 m"
    insulation = "90 degC"
    voltage    = "600 V"
    ampacity   = "20 A"
    ambient    = "35 degC"
  }
  fuse {
    class      = "other"
    rating     = "30 A"
    voltage    = "58 V"
    interrupts = "10 kA"
    dc_rated   = true
    distance   = "0.2 m"
  }
}
