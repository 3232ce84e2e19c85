# expect: meets marine.poles on protection.bank.house

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
      poles      = 2
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
    poles      = 2
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
      poles      = 2
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
    poles      = 2
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
    poles      = 2
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
    poles      = 2
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
    poles      = 2
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
    poles      = 2
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
    poles      = 2
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

grounding {
  dc                      = "floating"
  dc_bonds                = 0
  neutral_bonds           = 1
  frames_bonded           = true
  ground_fault_protection = true
  surge_protection        = true
}
