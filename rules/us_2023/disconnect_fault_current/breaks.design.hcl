# expect: breaks us_2023.disconnect_fault_current on disconnect.bank.house

bank "house" {
  battery                = "mesa-100"
  series                 = 1
  parallel               = 3
  coldest                = "2 degC"
  hottest                = "35 degC"
  take_off               = "busbar"
  matched                = true
  low_voltage_disconnect = "46 V"
  declared "us_2023" {
    listed              = true
    ventilated          = true
    guarded             = true
    emergency_shutdown  = true
    in_sight_disconnect = true
  }
  each {
    fuse {
      class      = "T"
      rating     = "125 A"
      voltage    = "125 V"
      interrupts = "20 kA"
      dc_rated   = true
      distance   = "0.1 m"
      declared "us_2023" {
        at_source = true
      }
    }
  }
  main {
    cable_run {
      size                 = "1/0 AWG"
      length               = "1.2 m"
      insulation           = "90 degC"
      voltage              = "600 V"
      ampacity             = "160 A"
      ambient              = "35 degC"
      method               = "conduit"
      cores                = "single"
      grouped              = 2
      indoors              = true
      terminal_temperature = "75 degC"
      declared "us_2023" {
        fine_strand_lugs = true
        through_wall     = false
      }
    }
    fuse {
      class      = "T"
      rating     = "125 A"
      voltage    = "125 V"
      interrupts = "20 kA"
      dc_rated   = true
      distance   = "0.2 m"
      declared "us_2023" {
        at_source = true
      }
    }
  }
  disconnect {
    rating     = "200 A"
    voltage    = "80 V"
    dc_rated   = true
    load_break = true
    poles      = 1
    declared "us_2023" {
      readily_accessible    = true
      lockable              = true
      distance_to_equipment = "1 m"
      fault_current         = "5 kA"
    }
  }
}

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

load "pump" {
  from          = "ac_output.shop"
  power         = "900 W"
  surge         = "2.7 kW"
  hours_per_day = 0.5
  breaker {
    rating     = "15 A"
    voltage    = "125 V"
    interrupts = "5 kA"
    dc_rated   = false
    polarized  = false
    poles      = 1
  }
  disconnect {
    rating     = "20 A"
    voltage    = "125 V"
    dc_rated   = false
    load_break = true
    poles      = 1
    declared "us_2023" {
      readily_accessible = true
      lockable           = true
    }
  }
}
