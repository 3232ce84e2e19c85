# Stage one of three: 12 V. One controller of 60 A can put 12 V x 60 A = 720 W
# into the bank, which is what two panels give. Stages two and three keep the
# controller and its 60 A: twice the voltage at the same current is twice the
# power, and the cables stay as they are. What does change each time is how the
# panels are strung, every setting, and every check against a voltage.

design "Upper Terrace farm, 12 V" {
  revision = "A"
}

site {
  latitude  = "42.3 deg"
  longitude = "-7.1 deg"
  elevation = "720 m"
  coldest   = "-15 degC"
  hottest   = "33 degC"
  place     = "building"
}

# Two batteries of 12.8 V side by side: 200 Ah, 2.6 kWh, 5 kA in a short circuit.
bank "farm" {
  battery                = "pebble-100"
  series                 = 1
  parallel               = 2
  coldest                = "5 degC"
  hottest                = "28 degC"
  take_off               = "diagonal"
  matched                = true # all from one delivery: old cells never join new ones
  low_voltage_disconnect = "12.0 V"

  each {
    fuse {
      fuse     = "t-100"
      distance = "0.15 m"
    }
  }

  # Out: inverter 72 A + lamps 3 A = 75 A. In: 60 A. 1.25 x 75 A = 94 A.
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
    bank_voltage             = "12 V" # set by hand after every change of the bank
    charge_current           = "60 A"
    absorption               = "14.2 V"
    float                    = "13.5 V"
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

# 12 V: each panel is a string of its own, two in parallel.
#   coldest morning  37.4 V x (1 + 0.26 % x 40) = 41.3 V, under 150 V
#   power            2 x 410 W = 820 W, 114 % of 720 W
#   a fault in one is fed by the other alone: 14 A, its panel bears 25 A
array "terrace" {
  charger  = "main"
  tilt     = "35 deg"
  azimuth  = "180 deg"
  mounting = "open_rack"
  losses   = "8 %"
  string "a" {
    panels   = { "shale-410" = 1 }
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

# 800 W / (12.2 V x 91 %) = 72 A; 1.25 x 72 A = 90 A: the same fuse and cable
# at every stage.
ac_output "house" {
  inverter      = "tread-12"
  bank          = "farm"
  low_cutoff    = "12.2 V"
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
  power         = "600 W"
  hours_per_day = 0.5
  surge         = "1200 W"
}

load "lamps" {
  from          = "bank.farm"
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
