# The boat that the examples of this book share: a sailing boat with a lithium
# bank at 24 V. Every rule meets on it, or does not apply.

design "Ketch Sandpiper" {
  revision = "A"
}

site {
  latitude  = "47 deg"
  longitude = "8 deg"
  elevation = "950 m"
  coldest   = "-20 degC"
  hottest   = "30 degC"
  place     = "boat"
  declared "marine" {
    petrol = true
  }
}

bank "house" {
  battery                = "peat-100"
  series                 = 1
  parallel               = 3
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
      declared "marine" {
        petrol_space       = false
        ignition_protected = false
      }
    }
  }
  main {
    cable_run {
      size         = "70 mm2"
      length       = "1.2 m"
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
      interrupts = "20 kA"
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
    voltage    = "80 V"
    dc_rated   = true
    load_break = true
    declared "marine" {
      petrol_space       = false
      ignition_protected = false
    }
  }
  declared "marine" {
    restrained           = true
    terminals_covered    = true
    clear_of_fuel        = true
    vented               = true
    cold_cranking        = "900 A"
    cell_standard        = "IEC 62619 and IEC 62620"
    pre_alarm            = true
    remote_switch_direct = true
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
    absorption               = "28.4 V"
    float                    = "27.0 V"
    equalize                 = false
    temperature_compensation = "0 mV/K"
    cold_charge_cutoff       = "5 degC"
    bank_temperature_sensor  = true
    passcode_changed         = true
    locked                   = true
  }
  cable_run {
    size         = "25 mm2"
    length       = "1.5 m"
    strand       = "class_5"
    tinned       = true
    insulation   = "105 degC"
    voltage      = "600 V"
    ambient      = "35 degC"
    grouped      = 2
    sheathed     = false
    engine_space = false
  }
  breaker {
    rating     = "100 A"
    voltage    = "80 V"
    interrupts = "10 kA"
    dc_rated   = true
    polarized  = false
    distance   = "0.2 m"
    declared "marine" {
      petrol_space       = false
      ignition_protected = false
    }
  }
  declared "marine" {
    petrol_space       = false
    ignition_protected = false
  }
}

array "south" {
  charger  = "main"
  tilt     = "45 deg"
  azimuth  = "180 deg"
  mounting = "open_rack"
  string "a" {
    panels   = { "fen-200" = 2 }
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
    declared "marine" {
      petrol_space       = false
      ignition_protected = false
    }
  }
}

ac_output "cabin" {
  inverter   = "sedge-1500"
  bank       = "house"
  low_cutoff = "23 V"
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
    rating     = "100 A"
    voltage    = "125 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
    declared "marine" {
      petrol_space       = false
      ignition_protected = false
    }
  }
  declared "marine" {
    petrol_space       = false
    ignition_protected = false
    residual_current   = "30 mA"
  }
}

load "lights" {
  from          = "bank.house"
  power         = "30 W"
  surge         = "30 W"
  hours_per_day = 5
  voltage_min   = "21 V"
  voltage_max   = "30 V"
  cable_run {
    size         = "2.5 mm2"
    length       = "8 m"
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
    class      = "other"
    rating     = "5 A"
    voltage    = "32 V"
    interrupts = "10 kA"
    dc_rated   = true
    distance   = "0.2 m"
    declared "marine" {
      petrol_space       = false
      ignition_protected = false
    }
  }
  declared "marine" {
    critical      = true
    second_source = true
  }
}

load "pump" {
  from          = "ac_output.cabin"
  power         = "700 W"
  surge         = "1.9 kW"
  hours_per_day = 0.5
  declared "marine" {
    critical      = false
    second_source = false
  }
}

charge_source "engine" {
  bank               = "house"
  charge_current     = "40 A"
  charge_voltage     = "28.6 V"
  cold_charge_cutoff = "5 degC"
  together           = true
  cable_run {
    size         = "16 mm2"
    length       = "3 m"
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
    rating     = "60 A"
    voltage    = "125 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
    declared "marine" {
      petrol_space       = false
      ignition_protected = false
    }
  }
  declared "marine" {
    self_limiting       = false
    device_at_source    = "1.5 m"
    protected_from_loss = true
    shore_power         = false
  }
}

grounding {
  dc                      = "negative"
  dc_bonds                = 1
  neutral_bonds           = 1
  frames_bonded           = true
  ground_fault_protection = true
  surge_protection        = true
}

# A second bank, for what safety hangs on.
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
      interrupts = "20 kA"
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
    declared "marine" {
      petrol_space       = false
      ignition_protected = false
    }
  }
  declared "marine" {
    restrained        = true
    terminals_covered = true
    clear_of_fuel     = true
    vented            = true
    cold_cranking     = "650 A"
  }
}

charge_source "shore" {
  bank               = "start"
  charge_current     = "15 A"
  charge_voltage     = "28.8 V"
  cold_charge_cutoff = "-20 degC"
  together           = true
  cable_run {
    size         = "10 mm2"
    length       = "2 m"
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
    rating     = "25 A"
    voltage    = "125 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
    declared "marine" {
      petrol_space       = false
      ignition_protected = false
    }
  }
  declared "marine" {
    self_limiting       = true
    device_at_source    = "0 m"
    protected_from_loss = true
    shore_power         = true
    mains_separated     = true
    residual_current    = "30 mA"
    shore_isolation     = "galvanic_isolator"
  }
}
