# expect: breaks marine.interrupting_capacity on protection.bank.start

bank "start" {
  battery                = "bog-12"
  series                 = 2
  parallel               = 1
  coldest                = "-5 degC"
  hottest                = "35 degC"
  take_off               = "one_end"
  matched                = true
  low_voltage_disconnect = "23.0 V"
  main {
    cable_run {
      size         = "35 mm2"
      length       = "1 m"
      strand       = "class_5"
      tinned       = true
      insulation   = "105 degC"
      voltage      = "600 V"
      ambient      = "35 degC"
      grouped      = 2
      sheathed     = false
      engine_space = false
    }
    fuse {
      class      = "T"
      rating     = "150 A"
      voltage    = "125 V"
      interrupts = "1 kA"
      dc_rated   = true
      distance   = "0.2 m"
      declared "marine" {
        petrol_space       = false
        ignition_protected = false
      }
    }
  }
  disconnect {
    rating     = "200 A"
    voltage    = "48 V"
    dc_rated   = true
    load_break = true
  }
  declared "marine" {
    restrained        = true
    terminals_covered = true
    clear_of_fuel     = true
    vented            = true
    cold_cranking     = "650 A"
  }
}
