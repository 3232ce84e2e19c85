# Stage three done by half: the batteries were wired for 48 V and the controller
# set to it, and the panels stayed strung as they were. Lay it beside
# growth-48.design.hcl; "wrong:" says what was forgotten.

design "Upper Terrace farm, 48 V by half" {
  revision = "C"
}

site {
  latitude  = "42.3 deg"
  longitude = "-7.1 deg"
  elevation = "720 m"
  coldest   = "-15 degC"
  hottest   = "33 degC"
  place     = "building"
}

# Four in series, two such strings: 51.2 V, 200 Ah, 10.2 kWh. Four is the most
# that their maker allows in series. Still 5 kA in a short circuit.
bank "farm" {
  battery                = "pebble-100"
  series                 = 4
  parallel               = 2
  coldest                = "5 degC"
  hottest                = "28 degC"
  take_off               = "diagonal"
  matched                = true # all from one delivery: old cells never join new ones
  low_voltage_disconnect = "48.0 V"

  each {
    fuse {
      fuse     = "t-100"
      distance = "0.15 m"
    }
  }

  # Out: inverter 72 A + converter 3 A = 75 A. In: 60 A. 1.25 x 75 A = 94 A.
  main {
    cable_run {
      cable                = "ply-70"
      length               = "0.8 m"
      ambient              = "30 degC"
      method               = "free_air"
      cores                = "single"
      grouped              = 2
      per_pole             = 1
      terminal_temperature = "75 degC"
      indoors              = true
    }
    fuse {
      fuse     = "t-125"
      distance = "0.15 m"
    }
  }

  disconnect {
    rating     = "200 A"
    voltage    = "80 V"
    dc_rated   = true
    load_break = true
    poles      = 1
  }
}

charger "main" {
  controller = "stair-60"
  bank       = "farm"
  hottest    = "36 degC"
  clearance  = "200 mm"
  over_bank  = false
  settings {
    bank_voltage             = "48 V" # set by hand after every change of the bank
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
    cable                = "ply-35"
    length               = "1 m"
    ambient              = "36 degC"
    method               = "free_air"
    cores                = "single"
    grouped              = 2
    per_pole             = 1
    terminal_temperature = "75 degC"
    indoors              = true
  }
  # wrong: a 32 V breaker, good enough at 12 V. Above its voltage it opens, and the
  # arc goes on.
  breaker {
    rating           = "80 A"
    voltage          = "32 V"
    interrupts       = "10 kA"
    dc_rated         = true
    polarized        = false
    poles            = 1
    continuous_rated = false
    distance         = "0.15 m"
  }
}

# wrong: the new panels were strung two by two like the old ones, ten in all. Hot,
# two in series sink to 53 V, under the 56.8 V of a full bank: no charge at noon.
# Five strings give 69.8 A in a short circuit, 89 A at the edge of a cloud, and
# the controller bears 60 A. They are 142 % of what it can use, where its maker
# allows 130 %. The run's breaker is too small for them, and no string has a fuse.
array "terrace" {
  charger  = "main"
  tilt     = "35 deg"
  azimuth  = "180 deg"
  mounting = "open_rack"
  losses   = "8 %"
  string "a" {
    panels   = { "shale-410" = 2 }
    parallel = 5
    cable_run {
      cable                = "ply-6"
      length               = "2 m"
      ambient              = "60 degC"
      method               = "free_air"
      cores                = "single"
      grouped              = 2
      per_pole             = 1
      terminal_temperature = "75 degC"
      connector            = "scarp-4"
      indoors              = false
    }
  }
  cable_run {
    cable                = "ply-35"
    length               = "6 m"
    ambient              = "45 degC"
    method               = "conduit"
    cores                = "single"
    grouped              = 2
    per_pole             = 1
    terminal_temperature = "75 degC"
    above_roof           = "100 mm"
    indoors              = false
  }
  breaker { # 1.56 x 41.9 A = 65.3 A
    breaker  = "latch-80-pv"
    distance = "0.2 m"
  }
  disconnect {
    rating     = "80 A"
    voltage    = "250 V"
    dc_rated   = true
    load_break = true
    poles      = 2
  }
}

# 3200 W / (48.8 V x 91 %) = 72 A; 1.25 x 72 A = 90 A: the same fuse and cable
# at every stage.
ac_output "house" {
  inverter      = "tread-24" # wrong: its DC side ends at 32 V; and it is half as strong
  bank          = "farm"
  low_cutoff    = "48.8 V"
  hours_per_day = 8
  cable_run {
    cable                = "ply-35"
    length               = "0.8 m"
    ambient              = "30 degC"
    method               = "free_air"
    cores                = "single"
    grouped              = 2
    per_pole             = 1
    terminal_temperature = "75 degC"
    indoors              = true
  }
  fuse {
    fuse     = "t-100"
    distance = "0.15 m"
  }
  disconnect {
    rating     = "125 A"
    voltage    = "80 V"
    dc_rated   = true
    load_break = true
    poles      = 1
  }
}

load "tools" {
  from          = "ac_output.house"
  power         = "2400 W"
  hours_per_day = 0.5
  surge         = "4800 W"
}

# 12.5 V x 8 A / (40 V x 90 %) = 2.8 A from the bank, a third of what it gives.
supply "twelve" {
  converter = "spring-48"
  from      = "bank.farm"
  cable_run {
    cable                = "ply-6"
    length               = "1 m"
    ambient              = "30 degC"
    method               = "free_air"
    cores                = "single"
    grouped              = 2
    per_pole             = 1
    terminal_temperature = "75 degC"
    indoors              = true
  }
  fuse {
    fuse     = "t-10"
    distance = "0.15 m"
  }
}

load "lamps" {
  from          = "supply.twelve"
  power         = "30 W"
  hours_per_day = 5
  between       = ["17 h", "22 h"]
  surge         = "30 W" # lamps have none
  voltage_min   = "11 V"
  voltage_max   = "15 V"
  cable_run {
    cable                = "ply-6"
    length               = "5 m"
    ambient              = "30 degC"
    method               = "surface"
    cores                = "single"
    grouped              = 2
    per_pole             = 1
    terminal_temperature = "75 degC"
    indoors              = true
  }
  fuse {
    fuse     = "t-10"
    distance = "0.15 m"
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
