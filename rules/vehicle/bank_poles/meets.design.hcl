# expect: meets vehicle.bank_poles on bank.house (switch)
# expect: meets vehicle.bank_poles on bank.house (device)

bank "house" {
  battery                = "bog-12"
  series                 = 2
  parallel               = 2
  coldest                = "-5 degC"
  hottest                = "35 degC"
  take_off               = "busbar"
  matched                = true
  low_voltage_disconnect = "22.5 V"
  each {
    fuse {
      class      = "T"
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
      strand     = "class_5"
      insulation = "105 degC"
      voltage    = "600 V"
      ambient    = "35 degC"
      grouped    = 2
      declared "vehicle" {
        chassis_return = false
      }
    }
    fuse {
      poles      = 2
      class      = "T"
      rating     = "150 A"
      voltage    = "125 V"
      interrupts = "20 kA"
      dc_rated   = true
      distance   = "0.2 m"
      declared "vehicle" {
        enclosed_cable    = false
        outside_enclosure = false
      }
    }
  }
  disconnect {
    rating     = "200 A"
    voltage    = "80 V"
    dc_rated   = true
    load_break = true
    poles      = 2
  }
  declared "vehicle" {
    vented_outside    = true
    vent_area         = "16000 mm2"
    gas_current       = "4 A"
    sealed_from_cabin = true
    spark_free        = true
    restrained        = true
    clear_of_services = true
    cell_standard     = "IEC 62619"
    listed            = true
  }
}

# Neither switch nor main device: the book limits says so.
bank "spare" {
  battery  = "bog-12"
  series   = 2
  parallel = 1
  coldest  = "-5 degC"
  hottest  = "35 degC"
  each {
    fuse {
      class      = "T"
      rating     = "125 A"
      voltage    = "125 V"
      interrupts = "20 kA"
      dc_rated   = true
      distance   = "0.1 m"
    }
  }
}

# One of the two.
bank "switched" {
  battery  = "bog-12"
  series   = 2
  parallel = 1
  coldest  = "-5 degC"
  hottest  = "35 degC"
  disconnect {
    rating     = "200 A"
    voltage    = "80 V"
    dc_rated   = true
    load_break = true
    poles      = 2
  }
}

bank "fused" {
  battery  = "bog-12"
  series   = 2
  parallel = 1
  coldest  = "-5 degC"
  hottest  = "35 degC"
  main {
    cable_run {
      size       = "70 mm2"
      length     = "1.2 m"
      strand     = "class_5"
      insulation = "105 degC"
      voltage    = "600 V"
      ambient    = "35 degC"
      grouped    = 2
      declared "vehicle" {
        chassis_return = false
      }
    }
    fuse {
      poles      = 2
      class      = "T"
      rating     = "150 A"
      voltage    = "125 V"
      interrupts = "20 kA"
      dc_rated   = true
      distance   = "0.2 m"
      declared "vehicle" {
        enclosed_cable    = false
        outside_enclosure = false
      }
    }
  }
}

grounding {
  dc                      = "floating"
  dc_bonds                = 0
  neutral_bonds           = 1
  frames_bonded           = true
  ground_fault_protection = true
  surge_protection        = true
  declared "vehicle" {
    chassis_bond_size = "70 mm2"
  }
}
