# A canal boat that is lived in: three sealed lead batteries at 12 V, two panels
# flat on the cabin roof, and the engine's alternator, which charges while she
# moves. Small loads hang on the controller's load terminals, the larger ones
# on the bank itself.

design "Narrowboat Moorhen" {
  revision = "B"
}

site {
  latitude  = "52.6 deg"
  longitude = "-1.4 deg"
  elevation = "90 m"
  coldest   = "-12 degC"
  hottest   = "36 degC"
  place     = "boat"
}

# 330 Ah at 12 V, of which half is used. In a short circuit 3 x 2.2 kA = 6.6 kA.
bank "domestic" {
  battery                = "moss-110"
  series                 = 1
  parallel               = 3 # three or four lead strings are the most that share fairly
  coldest                = "-5 degC"
  hottest                = "35 degC"
  take_off               = "busbar" # leads of one length from each battery to the bar
  matched                = true
  ventilated             = true     # its locker, low and high, to the outside
  low_voltage_disconnect = "11.4 V" # deeper discharge costs years of life

  each {
    fuse {
      fuse     = "stud-100"
      distance = "0.03 m" # on the battery's stud
    }
  }

  # Out: inverter 58 A + lights, pump and fridge 15 A = 73 A; 1.25 x 73 A = 91 A.
  # In: 20 A + 45 A. The 150 A fuse guards 70 mm2 of cable.
  main {
    cable_run {
      cable                = "tinned-70"
      length               = "0.6 m"
      ambient              = "40 degC"
      method               = "free_air"
      cores                = "single"
      sheathed             = true
      grouped              = 2
      per_pole             = 1
      terminal_temperature = "75 degC"
      engine_space         = false
      indoors              = true
    }
    fuse {
      fuse     = "t-150"
      distance = "0.15 m"
    }
  }

  disconnect {
    rating     = "200 A"
    voltage    = "48 V"
    dc_rated   = true
    load_break = true
    poles      = 1
  }
}

charger "roof" {
  controller = "reed-20"
  bank       = "domestic"
  hottest    = "38 degC"
  clearance  = "120 mm"
  over_bank  = false # lead may gas when it is overcharged

  # Sealed lead: its own absorption and float, never equalized. Cold lead wants
  # more volts, so the set-points follow the bank's temperature:
  # at -5 degC 14.4 V + 6 cells x 4 mV/K x 30 K = 15.1 V. Every device on this
  # bank must bear that.
  settings {
    bank_voltage             = "12 V"
    charge_current           = "20 A"
    absorption               = "14.4 V"
    float                    = "13.5 V"
    equalize                 = false
    temperature_compensation = "-4 mV/K"
    cold_charge_cutoff       = "-10 degC"
    bank_temperature_sensor  = true
    passcode_changed         = true
    locked                   = true
  }

  cable_run {
    cable                = "tinned-10"
    length               = "1.5 m"
    ambient              = "40 degC"
    method               = "free_air"
    cores                = "single"
    sheathed             = true
    grouped              = 2
    per_pole             = 1
    terminal_temperature = "75 degC"
    engine_space         = false
    indoors              = true
  }
  breaker { # 1.25 x 20 A = 25 A, so 30 A
    breaker  = "lock-30"
    distance = "0.15 m"
  }
}

# Two panels in series: 46.0 V x (1 + 0.29 % x 37) = 50.9 V at -12 degC, under
# the controller's 75 V. One string only, so nothing can feed a fault in it and
# no string fuse is due. 240 W is just what 12 V x 20 A can use.
array "roof" {
  charger  = "roof"
  tilt     = "0 deg"
  azimuth  = "180 deg"
  mounting = "roof_flush" # glued down: the cells run 18 K hotter than on a rack
  losses   = "12 %"       # flat panels keep their dirt

  string "a" {
    panels   = { "lark-120" = 2 }
    parallel = 1
  }

  cable_run {
    cable                = "tinned-4"
    length               = "6 m"
    ambient              = "50 degC"
    method               = "surface"
    cores                = "single"
    sheathed             = true
    grouped              = 2
    per_pole             = 1
    terminal_temperature = "75 degC"
    connector            = "weir-2"
    engine_space         = false
    indoors              = false
  }
  breaker { # 1.56 x 6.62 A = 10.3 A, so 15 A
    breaker  = "lock-15"
    distance = "0.2 m"
  }
  disconnect {
    rating     = "25 A"
    voltage    = "100 V"
    dc_rated   = true
    load_break = true
    poles      = 2
  }
}

# The alternator may run while the sun charges: 20 A + 45 A = 65 A. The bank
# takes 3 x 38 A = 114 A, and 76 A with one battery taken out.
charge_source "engine" {
  bank               = "domestic"
  charge_current     = "45 A"
  charge_voltage     = "14.4 V"
  together           = true
  cold_charge_cutoff = "-10 degC"
  cable_run {
    cable                = "tinned-35"
    length               = "3 m"
    ambient              = "60 degC" # it starts in the engine's space
    method               = "free_air"
    cores                = "single"
    sheathed             = true
    grouped              = 2
    per_pole             = 1
    terminal_temperature = "75 degC"
    engine_space         = true
    indoors              = true
  }
  fuse { # 1.25 x 45 A = 56 A, so 60 A
    fuse     = "stud-60"
    distance = "0.15 m"
  }
  disconnect {
    rating     = "100 A"
    voltage    = "48 V"
    dc_rated   = true
    load_break = true
    poles      = 1
  }
}

# 600 W / (11.5 V x 90 %) = 58 A; 1.25 x 58 A = 72 A, so 80 A. It hangs on the
# bank, not on the controller's terminals, which give 20 A and no surge.
ac_output "galley" {
  inverter      = "wherry-600"
  bank          = "domestic"
  low_cutoff    = "11.5 V"
  hours_per_day = 2
  cable_run {
    cable                = "tinned-35"
    length               = "1.2 m"
    ambient              = "40 degC"
    method               = "free_air"
    cores                = "single"
    sheathed             = true
    grouped              = 2
    per_pole             = 1
    terminal_temperature = "75 degC"
    engine_space         = false
    indoors              = true
  }
  fuse {
    fuse     = "stud-80"
    distance = "0.15 m"
  }
  disconnect {
    rating     = "100 A"
    voltage    = "48 V"
    dc_rated   = true
    load_break = true
    poles      = 1
  }
}

load "blender" {
  from          = "ac_output.galley"
  power         = "350 W"
  hours_per_day = 0.2
  surge         = "900 W"
}

load "fridge" {
  from         = "bank.domestic"
  power        = "55 W"
  daily_energy = "420 Wh"
  surge        = "120 W"
  voltage_min  = "10.4 V"
  voltage_max  = "17 V"
  cable_run {
    cable                = "tinned-4"
    length               = "3 m"
    ambient              = "40 degC"
    method               = "surface"
    cores                = "single"
    sheathed             = true
    grouped              = 2
    per_pole             = 1
    terminal_temperature = "75 degC"
    engine_space         = false
    indoors              = true
  }
  fuse {
    fuse     = "t-15"
    distance = "0.15 m"
  }
}

# On the load terminals: 40 W and 60 W at 11 V are 9.1 A of their 20 A.
load "lights" {
  from          = "charger.roof.load_terminals"
  power         = "40 W"
  hours_per_day = 4
  between       = ["17 h", "24 h"]
  surge         = "40 W" # lamps have none
  months        = [1.5, 1.3, 1, 0.8, 0.6, 0.5, 0.5, 0.7, 0.9, 1.2, 1.4, 1.6]
  voltage_min   = "11 V"
  voltage_max   = "16 V"
  cable_run {
    cable                = "tinned-4"
    length               = "4 m"
    ambient              = "40 degC"
    method               = "surface"
    cores                = "single"
    sheathed             = true
    grouped              = 2
    per_pole             = 1
    terminal_temperature = "75 degC"
    engine_space         = false
    indoors              = true
  }
  fuse {
    fuse     = "t-15"
    distance = "0.15 m"
  }
}

load "water_pump" {
  from          = "charger.roof.load_terminals"
  power         = "60 W"
  hours_per_day = 0.3
  surge         = "130 W"
  voltage_min   = "11 V"
  voltage_max   = "16 V"
  cable_run {
    cable                = "tinned-4"
    length               = "3 m"
    ambient              = "40 degC"
    method               = "surface"
    cores                = "single"
    sheathed             = true
    grouped              = 2
    per_pole             = 1
    terminal_temperature = "75 degC"
    engine_space         = false
    indoors              = true
  }
  fuse {
    fuse     = "t-15"
    distance = "0.15 m"
  }
}

grounding {
  dc                      = "negative"
  dc_bonds                = 1 # one: at the hull's bonding point
  neutral_bonds           = 1 # one: in the inverter
  frames_bonded           = true
  ground_fault_protection = true
  surge_protection        = true
}
