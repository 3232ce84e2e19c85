# expect: meets us_2023.device_poles on protection.charger.main

grounding {
  dc                      = "floating"
  dc_bonds                = 0
  neutral_bonds           = 1
  frames_bonded           = true
  ground_fault_protection = true
  surge_protection        = true
  declared "us_2023" {
    electrode = true
    rod_only  = false
    gec_size  = "1/0 AWG"
  }
}

charger "main" {
  controller = "butte-60"
  bank       = "house"
  hottest    = "35 degC"
  clearance  = "150 mm"
  over_bank  = false
  settings {
    bank_voltage             = "48 V"
    charge_current           = "60 A"
    absorption               = "56.8 V"
    float                    = "54.0 V"
    equalize                 = false
    temperature_compensation = "0 mV/K"
    cold_charge_cutoff       = "5 degC"
    bank_temperature_sensor  = true
    passcode_changed         = true
    locked                   = true
  }
  cable_run {
    size                 = "4 AWG"
    length               = "1.5 m"
    insulation           = "90 degC"
    voltage              = "600 V"
    ampacity             = "90 A"
    ambient              = "35 degC"
    method               = "conduit"
    cores                = "single"
    grouped              = 2
    indoors              = true
    terminal_temperature = "75 degC"
    declared "us_2023" {
      fine_strand_lugs = true
    }
  }
  breaker {
    rating     = "80 A"
    voltage    = "80 V"
    interrupts = "10 kA"
    dc_rated   = true
    polarized  = false
    poles      = 2
    distance   = "0.2 m"
    declared "us_2023" {
      at_source = true
    }
  }
}

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
      poles      = 2
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
      poles      = 2
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

ac_output "shop" {
  inverter   = "basin-2400"
  bank       = "house"
  low_cutoff = "46 V"
  declared "us_2023" {
    listed      = true
    split_panel = false
    multiwire   = false
  }
  cable_run {
    size                 = "3 AWG"
    length               = "1 m"
    insulation           = "90 degC"
    voltage              = "600 V"
    ampacity             = "105 A"
    ambient              = "35 degC"
    method               = "conduit"
    cores                = "single"
    grouped              = 2
    indoors              = true
    terminal_temperature = "75 degC"
    declared "us_2023" {
      fine_strand_lugs = true
    }
  }
  fuse {
    class      = "T"
    rating     = "80 A"
    voltage    = "125 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
    poles      = 2
    declared "us_2023" {
      at_source = true
    }
  }
}

load "lights" {
  from          = "bank.house"
  power         = "60 W"
  surge         = "60 W"
  hours_per_day = 5
  voltage_min   = "42 V"
  voltage_max   = "60 V"
  cable_run {
    size                 = "12 AWG"
    length               = "8 m"
    insulation           = "90 degC"
    voltage              = "600 V"
    ampacity             = "25 A"
    ambient              = "35 degC"
    method               = "conduit"
    cores                = "single"
    grouped              = 2
    indoors              = true
    terminal_temperature = "60 degC"
    declared "us_2023" {
      fine_strand_lugs = true
    }
  }
  fuse {
    class      = "other"
    rating     = "10 A"
    voltage    = "60 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
    poles      = 2
    declared "us_2023" {
      at_source = true
    }
  }
}

supply "twelve" {
  converter = "gulch-20"
  from      = "bank.house"
  cable_run {
    size                 = "12 AWG"
    length               = "1.5 m"
    insulation           = "90 degC"
    voltage              = "600 V"
    ampacity             = "25 A"
    ambient              = "35 degC"
    method               = "conduit"
    cores                = "single"
    grouped              = 2
    indoors              = true
    terminal_temperature = "60 degC"
    declared "us_2023" {
      fine_strand_lugs = true
    }
  }
  fuse {
    class      = "other"
    rating     = "15 A"
    voltage    = "60 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
    poles      = 2
    declared "us_2023" {
      at_source = true
    }
  }
}

charge_source "engine" {
  bank               = "house"
  charge_current     = "40 A"
  charge_voltage     = "57.2 V"
  cold_charge_cutoff = "5 degC"
  together           = true
  cable_run {
    size                 = "6 AWG"
    length               = "3 m"
    insulation           = "90 degC"
    voltage              = "600 V"
    ampacity             = "70 A"
    ambient              = "35 degC"
    method               = "conduit"
    cores                = "single"
    grouped              = 2
    indoors              = true
    terminal_temperature = "75 degC"
    declared "us_2023" {
      fine_strand_lugs = true
    }
  }
  fuse {
    class      = "T"
    rating     = "60 A"
    voltage    = "125 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
    poles      = 2
    declared "us_2023" {
      at_source = true
    }
  }
}
