# expect: breaks marine.ignition_charger on charger.main

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
    size         = "25 mm2"
    length       = "1.5 m"
    strand       = "class_5"
    tinned       = true
    insulation   = "105 degC"
    voltage      = "600 V"
    ambient      = "35 degC"
    grouped      = 2
    sheathed     = false
    engine_space = false
  }
  breaker {
    rating     = "100 A"
    voltage    = "80 V"
    interrupts = "10 kA"
    dc_rated   = true
    polarized  = false
    distance   = "0.2 m"
    declared "marine" {
      petrol_space       = false
      ignition_protected = false
    }
  }
  declared "marine" {
    petrol_space       = true
    ignition_protected = false
  }
}
