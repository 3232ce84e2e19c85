# Stage three of three: 48 V. Still the same controller of 60 A and the same
# cables, now 48 V x 60 A = 2880 W. Compare with growth-24: nine panels in three
# strings of three. Two in series no longer reach the bank when hot, four would
# destroy the controller in the cold, and with a third string fuses become due.

design "Upper Terrace farm, 48 V" {
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
  breaker { # 1.25 x 60 A = 75 A, at every stage
    breaker  = "latch-80"
    distance = "0.15 m"
  }
}

# 48 V: three in series, three such strings.
#   hot noon         two would sink to 53 V, below the 56.8 V of a full bank;
#                    three hold 80 V
#   coldest morning  3 x 37.4 V x (1 + 0.26 % x 40) = 123.9 V, under 150 V;
#                    four would reach 165 V
#   power            9 x 410 W = 3690 W, 128 % of 2880 W; its maker allows 130 %
#   a fault in one string is fed by two others: 27.9 A, more than the 25 A that
#   the panels bear, so now each string has a fuse: at least 1.56 x 13.95 A
#   = 21.8 A, at most 25 A
array "terrace" {
  charger  = "main"
  tilt     = "35 deg"
  azimuth  = "180 deg"
  mounting = "open_rack"
  losses   = "8 %"
  string "a" {
    panels   = { "shale-410" = 3 }
    parallel = 3
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
    fuse {
      fuse     = "pv-25"
      distance = "0.2 m"
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
  inverter      = "tread-48"
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
