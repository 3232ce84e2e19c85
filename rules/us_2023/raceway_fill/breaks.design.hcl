# expect: breaks us_2023.raceway_fill on cable_run.array.south

array "south" {
  charger  = "main"
  tilt     = "35 deg"
  azimuth  = "180 deg"
  mounting = "roof_standoff"
  declared "us_2023" {
    on_building              = true
    arc_fault                = true
    rapid_shutdown           = true
    shutdown_voltage_outside = "20 V"
    shutdown_voltage_inside  = "70 V"
    hazard_control           = false
    initiator_outside        = true
    connectors_intermatable  = false
    labels                   = true
  }
  string "a" {
    panels   = { "sage-330" = 3 }
    parallel = 3
    cable_run {
      size                 = "10 AWG"
      length               = "6 m"
      insulation           = "90 degC"
      voltage              = "1000 V"
      ampacity             = "38 A"
      ambient              = "60 degC"
      method               = "free_air"
      cores                = "single"
      grouped              = 2
      indoors              = false
      terminal_temperature = "75 degC"
      connector            = "heron-4"
      grounding_size       = "12 AWG"
      above_roof           = "50 mm"
      declared "us_2023" {
        on_roof            = true
        readily_accessible = false
        raceway            = "none"
        cable_type         = "pv_wire"
        marking            = "plus_minus"
        shares_raceway     = false
        fine_strand_lugs   = true
      }
    }
    fuse {
      class      = "gPV"
      rating     = "20 A"
      voltage    = "1000 V"
      interrupts = "10 kA"
      dc_rated   = true
      poles      = 1
      declared "us_2023" {
        pv_listed = false
        pole      = "positive"
      }
    }
  }
  cable_run {
    size                 = "6 AWG"
    length               = "8 m"
    insulation           = "90 degC"
    voltage              = "600 V"
    ampacity             = "65 A"
    ambient              = "45 degC"
    method               = "conduit"
    cores                = "single"
    grouped              = 6
    indoors              = true
    terminal_temperature = "75 degC"
    grounding_size       = "10 AWG"
    above_roof           = "25 mm"
    declared "us_2023" {
      raceway_area       = "343 mm2"
      on_roof            = false
      readily_accessible = true
      raceway            = "metal"
      cable_type         = "thwn2"
      marking            = "plus_minus"
      shares_raceway     = false
      fine_strand_lugs   = true
    }
  }
  breaker {
    rating     = "50 A"
    voltage    = "250 V"
    interrupts = "6 kA"
    dc_rated   = true
    polarized  = false
    poles      = 2
    declared "us_2023" {
      pv_listed = true
      pole      = "both"
    }
  }
  disconnect {
    rating     = "60 A"
    voltage    = "250 V"
    dc_rated   = true
    load_break = true
    poles      = 2
    declared "us_2023" {
      readily_accessible    = true
      lockable              = true
      isolating_only        = false
      distance_to_equipment = "1 m"
      fault_current         = "10 kA"
    }
  }
}
