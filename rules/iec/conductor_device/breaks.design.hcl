# expect: breaks iec.conductor_device on protection.charger.main

charger "main" {
  controller = "reed-70"
  bank       = "house"
  hottest    = "35 degC"
  clearance  = "150 mm"
  over_bank  = false
  settings {
    bank_voltage             = "24 V"
    charge_current           = "60 A"
    absorption               = "28.8 V"
    float                    = "26.8 V"
    equalize                 = false
    temperature_compensation = "-4 mV/K"
    bank_temperature_sensor  = true
    passcode_changed         = true
    locked                   = true
  }
  cable_run {
    size       = "25 mm2"
    length     = "1.5 m"
    insulation = "90 degC"
    voltage    = "600 V"
    ambient    = "35 degC"
    grouped    = 2
    method     = "surface"
    cores      = "single"
    declared "iec" {
      single_layer = true
    }
  }
  breaker {
    class      = "C"
    rating     = "160 A"
    voltage    = "80 V"
    interrupts = "10 kA"
    dc_rated   = true
    polarized  = false
    distance   = "0.2 m"
  }
}
