# The same workshop as it was first drawn. Lay it beside ranch.design.hcl: every
# difference is a mistake that an inspector meets often, and "wrong:" says which.

design "Sorrel Creek ranch workshop, as first drawn" {
  revision  = "A"
  codebooks = ["us_2023"]
}

site {
  latitude  = "38 deg"
  longitude = "-105 deg"
  elevation = "900 m"
  coldest   = "-20 degC"
  hottest   = "36 degC"
  place     = "building"
  declared "us_2023" {
    occupancy = "other"
    structure = "building"
  }
}

bank "house" {
  battery                = "bench-100"
  series                 = 1
  parallel               = 2
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
    leads_ampacity      = "115 A" # 2 AWG at terminals marked 75 degC
  }
  each {
    fuse {
      class      = "T"
      rating     = "100 A"
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
      size                 = "2 AWG"
      length               = "1.2 m"
      insulation           = "90 degC"
      voltage              = "600 V"
      ampacity             = "120 A"
      ambient              = "35 degC"
      method               = "conduit"
      cores                = "single"
      grouped              = 2
      indoors              = true
      terminal_temperature = "75 degC"
      declared "us_2023" {
        through_wall = false
      }
    }
    fuse {
      # wrong: 4 kA can flow, and this fuse breaks 3 kA
      class      = "ANL"
      rating     = "100 A"
      voltage    = "125 V"
      interrupts = "3 kA"
      dc_rated   = true
      distance   = "0.2 m"
      declared "us_2023" {
        at_source        = true
        current_limiting = false
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

charger "main" {
  controller = "gully-60"
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
    # wrong: 75 A at terminals where 6 AWG has 65 A
    cable                = "thwn2-6"
    length               = "1.5 m"
    ambient              = "35 degC"
    method               = "conduit"
    cores                = "single"
    grouped              = 2
    indoors              = true
    terminal_temperature = "75 degC"
  }
  breaker {
    rating           = "80 A"
    voltage          = "80 V"
    interrupts       = "10 kA"
    dc_rated         = true
    polarized        = false
    poles            = 1
    distance         = "0.2 m"
    continuous_rated = false
    declared "us_2023" {
      # wrong: beside the controller, while the bank feeds the fault
      at_source = false
    }
  }
}

array "south" {
  charger  = "main"
  tilt     = "35 deg"
  azimuth  = "180 deg"
  mounting = "roof_standoff"
  declared "us_2023" {
    on_building = true
    # wrong: an arc in the roof burns on, and firefighters find 228 V
    arc_fault                = false
    rapid_shutdown           = true
    shutdown_voltage_outside = "228 V"
    shutdown_voltage_inside  = "70 V"
    hazard_control           = false
    initiator_outside        = true
    connectors_intermatable  = false
    labels                   = true
  }
  string "a" {
    panels   = { "bluff-330" = 5 } # wrong: 228 V on the coldest morning, 200 V bear the controller
    parallel = 2
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
      connector            = "plover-4"
      grounding_size       = "12 AWG"
      above_roof           = "50 mm"
      declared "us_2023" {
        on_roof            = true
        readily_accessible = false
        raceway            = "none"
        cable_type         = "pv_wire"
        marking            = "plus_minus"
        shares_raceway     = false
      }
    }
  }
  cable_run {
    # wrong: 12 AWG, behind a breaker of 35 A, ten millimetres over a hot roof
    size                 = "12 AWG"
    length               = "8 m"
    insulation           = "90 degC"
    voltage              = "600 V"
    ampacity             = "30 A"
    ambient              = "45 degC"
    method               = "conduit"
    cores                = "single"
    grouped              = 2
    indoors              = false
    terminal_temperature = "75 degC"
    grounding_size       = "10 AWG"
    above_roof           = "10 mm"
    declared "us_2023" {
      on_roof            = true
      readily_accessible = true
      raceway            = "nonmetallic"
      cable_type         = "thwn2"
      # wrong: white, as if it were at ground
      marking        = "white"
      shares_raceway = false
    }
  }
  breaker {
    rating           = "35 A"
    voltage          = "250 V"
    interrupts       = "6 kA"
    dc_rated         = true
    polarized        = false
    poles            = 2
    continuous_rated = false
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
    # wrong: neither pole is solidly grounded, and one stays live
    poles = 1
    declared "us_2023" {
      readily_accessible    = true
      lockable              = true
      isolating_only        = false
      distance_to_equipment = "1 m"
      fault_current         = "10 kA"
    }
  }
}

ac_output "shop" {
  inverter   = "coulee-2400"
  bank       = "house"
  low_cutoff = "46 V"
  declared "us_2023" {
    listed      = true
    split_panel = false
    multiwire   = false
    gfci        = true
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
  }
  fuse {
    class      = "T"
    rating     = "80 A"
    voltage    = "125 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
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
  }
  fuse {
    class      = "other"
    rating     = "10 A"
    voltage    = "60 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
    declared "us_2023" {
      at_source = true
    }
  }
}

load "porch" {
  from          = "charger.main.load_terminals"
  power         = "24 W"
  surge         = "24 W"
  hours_per_day = 10
  voltage_min   = "42 V"
  voltage_max   = "60 V"
}

load "pump" {
  from          = "ac_output.shop"
  power         = "900 W"
  surge         = "2.7 kW"
  hours_per_day = 0.5
}

supply "twelve" {
  converter = "spur-20"
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
  }
  fuse {
    class      = "other"
    rating     = "15 A"
    voltage    = "60 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
    declared "us_2023" {
      at_source = true
    }
  }
}

load "radio" {
  from          = "supply.twelve"
  power         = "50 W"
  surge         = "50 W"
  hours_per_day = 3
  voltage_min   = "11 V"
  voltage_max   = "15 V"
}

charge_source "engine" {
  bank               = "house"
  charge_current     = "40 A"
  charge_voltage     = "57.2 V"
  cold_charge_cutoff = "5 degC"
  together           = false
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
  }
  fuse {
    class      = "T"
    rating     = "60 A"
    voltage    = "125 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
    declared "us_2023" {
      at_source = true
    }
  }
}

grounding {
  dc                      = "negative"
  dc_bonds                = 1
  neutral_bonds           = 1
  frames_bonded           = true
  ground_fault_protection = true
  surge_protection        = true
  declared "us_2023" {
    electrode = true
    rod_only  = false
    gec_size  = "2 AWG"
  }
}
