# expect: breaks practice.floating_poles on grounding (devices)
# expect: breaks practice.floating_poles on grounding (switches)

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
    poles      = 1
    rating     = "100 A"
    voltage    = "80 V"
    interrupts = "10 kA"
    dc_rated   = true
    polarized  = false
    distance   = "0.2 m"
  }
}

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
    size       = "16 mm2"
    length     = "12 m"
    insulation = "90 degC"
    voltage    = "1000 V"
    ampacity   = "80 A"
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
    poles      = 1
  }
}

grounding {
  dc                      = "floating"
  dc_bonds                = 0
  neutral_bonds           = 1
  frames_bonded           = true
  ground_fault_protection = true
  surge_protection        = true
}
