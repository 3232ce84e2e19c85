# expect: breaks us_2023.storage_place on bank.house (room)
# expect: breaks us_2023.storage_place on bank.house (energy)

site {
  latitude  = "38 deg"
  longitude = "-105 deg"
  elevation = "900 m"
  coldest   = "-20 degC"
  hottest   = "36 degC"
  place     = "building"
  declared "us_2023" {
    occupancy = "one_two_family"
    structure = "building"
  }
}

bank "house" {
  battery                = "mesa-100"
  series                 = 1
  parallel               = 8
  coldest                = "2 degC"
  hottest                = "35 degC"
  take_off               = "busbar"
  matched                = true
  low_voltage_disconnect = "46 V"
  declared "us_2023" {
    room                = "habitable"
    leads_ampacity      = "115 A"
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
      fault_current         = "10 kA"
    }
  }
}
