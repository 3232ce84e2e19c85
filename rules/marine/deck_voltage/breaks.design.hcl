# expect: breaks marine.deck_voltage on pv_input.main.1

array "south" {
  charger  = "main"
  tilt     = "45 deg"
  azimuth  = "180 deg"
  mounting = "open_rack"
  string "a" {
    panels   = { "fen-200" = 3 }
    parallel = 3
    cable_run {
      size         = "4 mm2"
      length       = "6 m"
      strand       = "class_5"
      tinned       = true
      insulation   = "105 degC"
      voltage      = "1500 V"
      ambient      = "35 degC"
      grouped      = 2
      sheathed     = false
      engine_space = false
      connector    = "heron-4"
    }
    fuse {
      class      = "gPV"
      rating     = "20 A"
      voltage    = "1000 V"
      interrupts = "10 kA"
      dc_rated   = true
      declared "marine" {
        petrol_space       = false
        ignition_protected = false
      }
    }
  }
  cable_run {
    size         = "16 mm2"
    length       = "12 m"
    strand       = "class_5"
    tinned       = true
    insulation   = "105 degC"
    voltage      = "1000 V"
    ambient      = "35 degC"
    grouped      = 2
    sheathed     = false
    engine_space = false
  }
  breaker {
    rating     = "40 A"
    voltage    = "250 V"
    interrupts = "6 kA"
    dc_rated   = true
    polarized  = false
    poles      = 2
    declared "marine" {
      petrol_space       = false
      ignition_protected = false
    }
  }
  disconnect {
    rating     = "63 A"
    voltage    = "250 V"
    dc_rated   = true
    load_break = true
    poles      = 2
  }
}
