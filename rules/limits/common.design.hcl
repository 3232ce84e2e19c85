# The system that the examples of this book share: a cabin at 24 V with every
# device that a careful person puts in. Every rule meets on it, or does not apply.

design "Moss Edge cabin" {
  revision = "A"
}

site {
  latitude  = "47 deg"
  longitude = "8 deg"
  elevation = "950 m"
  coldest   = "-20 degC"
  hottest   = "30 degC"
  place     = "building"
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
    }
  }
  main {
    cable_run {
      size       = "70 mm2"
      length     = "1.2 m"
      insulation = "90 degC"
      voltage    = "600 V"
      ampacity   = "220 A"
      ambient    = "35 degC"
    }
    fuse {
      class      = "T"
      rating     = "150 A"
      voltage    = "125 V"
      interrupts = "20 kA"
      dc_rated   = true
      distance   = "0.2 m"
    }
  }
  disconnect {
    rating     = "200 A"
    voltage    = "80 V"
    dc_rated   = true
    load_break = true
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
    size       = "25 mm2"
    length     = "1.5 m"
    insulation = "90 degC"
    voltage    = "600 V"
    ampacity   = "110 A"
    ambient    = "35 degC"
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
      insulation = "120 degC"
      voltage    = "1500 V"
      ampacity   = "40 A"
      ambient    = "45 degC"
      connector  = "heron-4"
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
    insulation = "90 degC"
    voltage    = "1000 V"
    ampacity   = "80 A"
    ambient    = "40 degC"
  }
  breaker {
    rating     = "50 A"
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
    insulation = "90 degC"
    voltage    = "600 V"
    ampacity   = "140 A"
    ambient    = "35 degC"
  }
  fuse {
    class      = "T"
    rating     = "100 A"
    voltage    = "125 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
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
    insulation = "90 degC"
    voltage    = "600 V"
    ampacity   = "20 A"
    ambient    = "35 degC"
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

load "porch" {
  from          = "charger.main.load_terminals"
  power         = "24 W"
  surge         = "24 W"
  hours_per_day = 10
  voltage_min   = "21 V"
  voltage_max   = "30 V"
}

load "pump" {
  from          = "ac_output.cabin"
  power         = "700 W"
  surge         = "1.9 kW"
  hours_per_day = 0.5
}

supply "twelve" {
  converter = "rush-20"
  from      = "bank.house"
  cable_run {
    size       = "4 mm2"
    length     = "1.5 m"
    insulation = "90 degC"
    voltage    = "600 V"
    ampacity   = "35 A"
    ambient    = "35 degC"
  }
  fuse {
    class      = "other"
    rating     = "20 A"
    voltage    = "58 V"
    interrupts = "10 kA"
    dc_rated   = true
    distance   = "0.2 m"
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
  charge_voltage     = "28.6 V"
  cold_charge_cutoff = "5 degC"
  together           = true
  cable_run {
    size       = "16 mm2"
    length     = "3 m"
    insulation = "90 degC"
    voltage    = "600 V"
    ampacity   = "80 A"
    ambient    = "40 degC"
  }
  fuse {
    class      = "T"
    rating     = "60 A"
    voltage    = "125 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
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
