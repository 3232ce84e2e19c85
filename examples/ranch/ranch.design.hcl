# A workshop building on a ranch, off the grid, under the National Electrical Code
# of 2023: eight panels on the roof, a 48 V bank, an inverter for the tools. It names
# the codebook that judges it by that code; what the code asks beyond a design is
# answered in the blocks "declared". The code in force, its local amendments and the
# inspector decide.
#
# codebooks/fell_county holds an example of such amendments; a workshop puts it in
# force with codebook "fell_county" { path = "codebooks/fell_county" }.

design "Sorrel Creek ranch workshop" {
  revision  = "B"
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

# Two batteries side by side, each behind its own fuse. Everything leaves through one
# class T fuse at the bank: 1.25 x 66 A is 83 A, 100 A the size chosen.
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
      class      = "T"
      rating     = "100 A"
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

# 60 A at the controller, 75 A for continuous duty: an 80 A breaker, and 4 AWG, which
# has 85 A at terminals marked 75 degC.
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
    cable                = "thwn2-4"
    length               = "1.5 m"
    ambient              = "35 degC"
    method               = "conduit"
    cores                = "single"
    grouped              = 2
    indoors              = true
    terminal_temperature = "75 degC"
  }
  breaker {
    rating     = "80 A"
    voltage    = "80 V"
    interrupts = "10 kA"
    dc_rated   = true
    polarized  = false
    poles      = 1
    distance   = "0.2 m"
    declared "us_2023" {
      at_source = true
    }
  }
}

# Two strings of four: 182 V on the coldest morning. The other string can feed 12.8 A
# into one, which its panels bear without a fuse. Together 1.5625 x 20.4 A = 31.9 A:
# a 35 A breaker, and 8 AWG in metal from the roof to the controller.
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
    panels   = { "bluff-330" = 4 }
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
    size                 = "8 AWG"
    length               = "8 m"
    insulation           = "90 degC"
    voltage              = "600 V"
    ampacity             = "45 A"
    ambient              = "45 degC"
    method               = "conduit"
    cores                = "single"
    grouped              = 2
    indoors              = true
    terminal_temperature = "75 degC"
    grounding_size       = "10 AWG"
    above_roof           = "25 mm"
    declared "us_2023" {
      on_roof            = false
      readily_accessible = true
      raceway            = "metal"
      cable_type         = "thwn2"
      marking            = "plus_minus"
      shares_raceway     = false
    }
  }
  breaker {
    rating     = "35 A"
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

# 2400 W at 46 V and 92 % are 56.7 A, 70.9 A for continuous duty.
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

# One pole is grounded through the controller's ground-fault device: functionally, not
# solidly. So the array's switch has two poles, and no conductor of it is white.
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
