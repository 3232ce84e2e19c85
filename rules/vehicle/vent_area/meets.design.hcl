# expect: meets vehicle.vent_area on bank.house

# A second bank with a source of its own, at 2.33 V a cell: 12 cells and 225 Ah ask
# for 7560 mm2.
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
      size       = "2.5 mm2"
      length     = "4 m"
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
      class      = "T"
      rating     = "50 A"
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
  declared "vehicle" {
    vented_outside    = true
    vent_area         = "7560 mm2"
    gas_current       = "4 A"
    sealed_from_cabin = true
    restrained        = true
    clear_of_services = true
    cell_standard     = "none"
    listed            = false
  }
}

charge_source "shore" {
  bank               = "start"
  charge_current     = "15 A"
  charge_voltage     = "28 V"
  cold_charge_cutoff = "5 degC"
  together           = true
  cable_run {
    size       = "2.5 mm2"
    length     = "4 m"
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
    class      = "other"
    rating     = "5 A"
    voltage    = "32 V"
    interrupts = "10 kA"
    dc_rated   = true
    distance   = "0.2 m"
  }
}

# A third one, which nothing of the design charges.
bank "spare" {
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
      size       = "2.5 mm2"
      length     = "4 m"
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
      class      = "T"
      rating     = "50 A"
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
  declared "vehicle" {
    vented_outside    = true
    vent_area         = "7560 mm2"
    gas_current       = "4 A"
    sealed_from_cabin = true
    restrained        = true
    clear_of_services = true
    cell_standard     = "none"
    listed            = false
  }
}
