design "Larch Col hut" {
  revision  = "C"
  parts     = ["../parts/*.parts.hcl"]
  codebooks = ["us_2023"] # besides the workshop's; datasheet, limits and practice are always in force
}

site {
  latitude  = "46.52 deg"
  longitude = "9.87 deg"
  elevation = "1840 m"
  coldest   = "-27 degC"
  hottest   = "29 degC"
  place     = "building"      # building, ground, vehicle, boat
  weather   = "larch-col.epw" # optional EPW file: gives position, coldest and hottest where they are left out
}

bank "house" {
  battery                = "fell-200"
  series                 = 1
  parallel               = 2
  coldest                = "5 degC" # where the bank stands
  hottest                = "30 degC"
  take_off               = "diagonal" # diagonal, busbar, one_end: how the parallel strings are joined
  matched                = true       # one model, one age, joined within the maker's voltage spread
  low_voltage_disconnect = "22 V"
  each { # every parallel string of batteries
    fuse {
      rating     = "125 A"
      voltage    = "80 V"
      interrupts = "20 kA"
      dc_rated   = true
    }
  }
  main { # the common conductor of the bank and its protection
    cable_run {
      size       = "70 mm2"
      length     = "1.2 m" # one way
      insulation = "90 degC"
      ambient    = "30 degC"
    }
    fuse {
      class      = "T"
      rating     = "200 A"
      voltage    = "125 V"
      interrupts = "20 kA"
      dc_rated   = true
      distance   = "0.2 m" # of unprotected conductor from the source of fault current (bank side: from the bank or its bus)
    }
  }
  disconnect {
    rating     = "275 A"
    voltage    = "80 V"
    dc_rated   = true
    load_break = true
  }
}

charger "main" {
  controller = "ridge-70"
  bank       = "house"
  hottest    = "35 degC" # air around the controller
  # what is programmed into it
  settings {
    bank_voltage             = "24 V"
    charge_current           = "60 A"
    absorption               = "28.4 V"
    float                    = "27.0 V"
    equalize                 = false
    temperature_compensation = "0 mV/K" # per cell
    cold_charge_cutoff       = "5 degC"
    bank_temperature_sensor  = true
    passcode_changed         = true
  }
  cable_run {
    size       = "25 mm2"
    length     = "2.5 m"
    insulation = "90 degC"
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
  azimuth  = "180 deg"   # clockwise from true north
  mounting = "open_rack" # open_rack, roof_standoff, roof_flush, portable
  losses   = "8 %"       # soiling, wiring beyond the runs, aging; default 10 %, listed as assumed
  string "a" {
    panels   = { "slate-410" = 2 } # in series
    parallel = 2                   # two such strings
  }
  string "b" {
    panels = { "slate-410" = 1, "dusk-380" = 1 } # unlike panels in one string
    fuse {
      rating   = "20 A"
      voltage  = "1000 V"
      dc_rated = true
      class    = "gPV"
    }
  }
  cable_run {
    size       = "16 mm2"
    length     = "14 m"
    insulation = "90 degC"
    ambient    = "45 degC"
    grouped    = 2         # current-carrying conductors together
    method     = "conduit" # conduit, insulated_wall, surface, free_air, cable_tray, buried, direct_buried
    cores      = "single"  # single, multi
    above_roof = "0 mm"    # height of a conduit over a roof, where it lies on one
    per_pole   = 1         # conductors in parallel per pole
    indoors    = false     # inside the building
    # also: cable (a part), material, strand, tinned, sheathed (yes/no), engine_space (yes/no), terminal_temperature (marked on
    # the terminals), grounding_size (of the grounding conductor that goes along), connector
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
  inverter   = "moor-2000"
  bank       = "house"
  low_cutoff = "23 V" # programmed
}

load "lights" {
  from          = "bank.house" # a bank, an ac_output, a converter's supply, or "charger.main.load_terminals"
  power         = "60 W"
  hours_per_day = 6
  voltage_min   = "21 V" # the voltages that it works at
  voltage_max   = "30 V"
}

load "pump" {
  from          = "ac_output.cabin"
  power         = "700 W"
  hours_per_day = 0.5
  surge         = "1.9 kW"
}

supply "twelve" { # a lower-voltage circuit through a converter
  converter = "brook-20"
  from      = "bank.house"
}

charge_source "engine" { # any other source that charges the bank
  bank           = "house"
  charge_current = "40 A"
  charge_voltage = "28.6 V"
  together       = true # may run while the sun charges
}

grounding {
  dc                      = "negative" # negative, positive, floating
  dc_bonds                = 1
  neutral_bonds           = 1
  frames_bonded           = true
  ground_fault_protection = true
  surge_protection        = true
}

reading "south-a-open" { # a measurement made on site
  title            = "open circuit, before connecting"
  of               = "string.south.a.voc" # a subject and voc, isc, vmp, imp, power, voltage or current
  value            = "72.1 V"
  taken            = "2026-05-02"
  cell_temperature = "41 degC"
  irradiance       = "820 W/m2"
}

# a written permission to depart from one rule, on subjects as its verdicts name them
waiver "practice.voltage_drop" {
  on          = ["cable_run.array.south"]
  reason      = "cable already buried; re-pull planned with the second array"
  approved_by = "inspector's letter 14/26"
  expires     = "2027-04-01"
}
