# expect: breaks iec.shrouded_terminals on bank.house

bank "house" {
  battery                = "bog-12"
  series                 = 4
  parallel               = 2
  coldest                = "5 degC"
  hottest                = "35 degC"
  take_off               = "busbar"
  matched                = true
  low_voltage_disconnect = "23.0 V"
  each {
    fuse {
      class      = "gG"
      rating     = "125 A"
      voltage    = "125 V"
      interrupts = "20 kA"
      dc_rated   = true
      distance   = "0.1 m"
    }
  }
  main {
    cable_run {
      size       = "70 mm2"
      length     = "1.2 m"
      insulation = "90 degC"
      voltage    = "600 V"
      ambient    = "35 degC"
      grouped    = 2
      method     = "surface"
      cores      = "single"
    }
    fuse {
      class      = "gG"
      rating     = "160 A"
      voltage    = "125 V"
      interrupts = "20 kA"
      dc_rated   = true
      distance   = "0.2 m"
    }
  }
  disconnect {
    rating     = "200 A"
    voltage    = "80 V"
    dc_rated   = true
    load_break = true
    poles      = 2
  }
  declared "iec" {
    ventilation        = "natural"
    vent_area          = "160 cm2"
    forced_air         = "6 m3/h"
    gas_current        = "4 A"
    spark_distance     = "0.7 m"
    terminals_shrouded = false
  }
}

charger "main" {
  controller = "reed-70"
  bank       = "house"
  hottest    = "35 degC"
  clearance  = "150 mm"
  over_bank  = false
  settings {
    bank_voltage             = "48 V"
    charge_current           = "60 A"
    absorption               = "57.6 V"
    float                    = "53.6 V"
    equalize                 = true
    equalize_voltage         = "62.0 V"
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
    rating     = "100 A"
    voltage    = "80 V"
    interrupts = "10 kA"
    dc_rated   = true
    polarized  = false
    distance   = "0.2 m"
  }
}
