# The caravan that the examples of this book share: lead batteries at 24 V in a
# compartment of their own. Every rule meets on it, or does not apply.

design "Caravan Dunlin" {
  revision = "A"
}

site {
  latitude  = "47 deg"
  longitude = "8 deg"
  elevation = "950 m"
  coldest   = "-20 degC"
  hottest   = "30 degC"
  place     = "vehicle"
  declared "vehicle" {
    standard = "as_nzs_3001"
  }
}

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

charger "main" {
  controller = "reed-70"
  bank       = "house"
  hottest    = "35 degC"
  clearance  = "150 mm"
  over_bank  = false
  settings {
    bank_voltage             = "24 V"
    charge_current           = "60 A"
    absorption               = "28.8 V"
    float                    = "26.8 V"
    equalize                 = false
    temperature_compensation = "-4 mV/K"
    cold_charge_cutoff       = "5 degC"
    bank_temperature_sensor  = true
    passcode_changed         = true
    locked                   = true
  }
  cable_run {
    size       = "25 mm2"
    length     = "1.5 m"
    strand     = "class_5"
    insulation = "105 degC"
    voltage    = "600 V"
    ambient    = "35 degC"
    grouped    = 2
    declared "vehicle" {
      chassis_return = false
    }
  }
  breaker {
    rating     = "100 A"
    voltage    = "80 V"
    interrupts = "10 kA"
    dc_rated   = true
    polarized  = false
    distance   = "0.2 m"
  }
}

array "south" {
  charger  = "main"
  tilt     = "45 deg"
  azimuth  = "180 deg"
  mounting = "open_rack"
  string "a" {
    panels   = { "fen-200" = 3 }
    parallel = 3
    cable_run {
      size       = "4 mm2"
      length     = "6 m"
      strand     = "class_5"
      insulation = "105 degC"
      voltage    = "1500 V"
      ambient    = "35 degC"
      grouped    = 2
      connector  = "heron-4"
      declared "vehicle" {
        chassis_return = false
      }
    }
    fuse {
      class      = "gPV"
      rating     = "20 A"
      voltage    = "1000 V"
      interrupts = "10 kA"
      dc_rated   = true
    }
  }
  cable_run {
    size       = "16 mm2"
    length     = "12 m"
    strand     = "class_5"
    insulation = "105 degC"
    voltage    = "1000 V"
    ambient    = "35 degC"
    grouped    = 2
    declared "vehicle" {
      chassis_return = false
    }
  }
  breaker {
    rating     = "40 A"
    voltage    = "250 V"
    interrupts = "6 kA"
    dc_rated   = true
    polarized  = false
    poles      = 2
  }
  disconnect {
    rating     = "63 A"
    voltage    = "250 V"
    dc_rated   = true
    load_break = true
    poles      = 2
  }
}

ac_output "cabin" {
  inverter   = "sedge-1500"
  bank       = "house"
  low_cutoff = "23 V"
  cable_run {
    size       = "35 mm2"
    length     = "1 m"
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
    rating     = "100 A"
    voltage    = "125 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
  }
  declared "vehicle" {
    residual_current = "30 mA"
  }
}

load "lights" {
  from          = "bank.house"
  power         = "60 W"
  surge         = "60 W"
  hours_per_day = 5
  voltage_min   = "21 V"
  voltage_max   = "30 V"
  cable_run {
    size       = "2.5 mm2"
    length     = "8 m"
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

load "pump" {
  from          = "ac_output.cabin"
  power         = "700 W"
  surge         = "1.9 kW"
  hours_per_day = 0.5
}

charge_source "engine" {
  bank               = "house"
  charge_current     = "40 A"
  charge_voltage     = "28.6 V"
  cold_charge_cutoff = "5 degC"
  together           = true
  cable_run {
    size       = "16 mm2"
    length     = "3 m"
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
    rating     = "60 A"
    voltage    = "125 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
  }
  declared "vehicle" {
    self_limiting       = false
    device_at_source    = "0.2 m"
    shore_power         = false
    protected_from_loss = true
  }
}

grounding {
  dc                      = "negative"
  dc_bonds                = 1
  neutral_bonds           = 1
  frames_bonded           = true
  ground_fault_protection = true
  surge_protection        = true
  declared "vehicle" {
    chassis_bond_size = "70 mm2"
  }
}
