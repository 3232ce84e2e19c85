# expect: breaks us_2023.connectors on string.south.a

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
