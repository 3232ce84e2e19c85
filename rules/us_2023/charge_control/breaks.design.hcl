# expect: breaks us_2023.charge_control on charger.main

charger "main" {
  controller = "butte-60"
  bank       = "house"
  hottest    = "35 degC"
  clearance  = "150 mm"
  over_bank  = false
  settings {
    bank_voltage             = "48 V"
    charge_current           = "60 A"
    absorption               = "56.8 V"
    float                    = "54.0 V"
    equalize                 = false
    temperature_compensation = "0 mV/K"
    cold_charge_cutoff       = "5 degC"
    bank_temperature_sensor  = true
    passcode_changed         = false
    locked                   = false
  }
  cable_run {
    size                 = "4 AWG"
    length               = "1.5 m"
    insulation           = "90 degC"
    voltage              = "600 V"
    ampacity             = "90 A"
    ambient              = "35 degC"
    method               = "conduit"
    cores                = "single"
    grouped              = 2
    indoors              = true
    terminal_temperature = "75 degC"
    declared "us_2023" {
      fine_strand_lugs = true
    }
  }
  breaker {
    rating     = "80 A"
    voltage    = "80 V"
    interrupts = "10 kA"
    dc_rated   = true
    polarized  = false
    poles      = 1
    distance   = "0.2 m"
    declared "us_2023" {
      at_source = true
    }
  }
}
