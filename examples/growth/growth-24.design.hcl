# Stage two of three: 24 V. The same controller of 60 A, the same cables, twice
# the power: 24 V x 60 A = 1440 W. Compare with growth-12: the panels are strung
# two in series, the batteries two in series, the settings double, the inverter
# is new, and the 12 V lamps now hang on a converter.

design "Upper Terrace farm, 24 V" {
  revision = "B"
}

site {
  latitude  = "42.3 deg"
  longitude = "-7.1 deg"
  elevation = "720 m"
  coldest   = "-15 degC"
  hottest   = "33 degC"
  place     = "building"
}

# Two in series, two such strings in parallel: 25.6 V, 200 Ah, 5.1 kWh. Series
# adds nothing to the short circuit: 2 x 2.5 kA = 5 kA as before.
bank "farm" {
  battery                = "pebble-100"
  series                 = 2
  parallel               = 2
  coldest                = "5 degC"
  hottest                = "28 degC"
  take_off               = "diagonal"
  matched                = true # all from one delivery: old cells never join new ones
  low_voltage_disconnect = "24.0 V"

  each {
    fuse {
      fuse     = "t-100"
      distance = "0.15 m"
    }
  }

  # Out: inverter 72 A + converter 5 A = 77 A. In: 60 A. 1.25 x 77 A = 96 A.
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
    bank_voltage             = "24 V" # set by hand after every change of the bank
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
  breaker { # 1.25 x 60 A = 75 A, at every stage
    breaker  = "latch-80"
    distance = "0.15 m"
  }
}

# 24 V: two in series, two such strings. One panel alone would not do: hot, its
# best power lies at 26.7 V, below the 28.4 V of a full bank.
#   coldest morning  2 x 37.4 V x (1 + 0.26 % x 40) = 82.6 V, under 150 V
#   power            4 x 410 W = 1640 W, 114 % of 1440 W
#   a fault in one string is fed by the other alone: 14 A, its panels bear 25 A
array "terrace" {
  charger  = "main"
  tilt     = "35 deg"
  azimuth  = "180 deg"
  mounting = "open_rack"
  losses   = "8 %"
  string "a" {
    panels   = { "shale-410" = 2 }
    parallel = 2
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
  breaker { # 1.56 x 27.9 A = 43.5 A
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

# 1600 W / (24.4 V x 91 %) = 72 A; 1.25 x 72 A = 90 A: the same fuse and cable
# at every stage.
ac_output "house" {
  inverter      = "tread-24"
  bank          = "farm"
  low_cutoff    = "24.4 V"
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
  power         = "1200 W"
  hours_per_day = 0.5
  surge         = "2400 W"
}

# 12.5 V x 8 A / (20 V x 92 %) = 5.4 A from the bank; 1.25 x 5.4 A = 6.8 A.
supply "twelve" {
  converter = "spring-24"
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
