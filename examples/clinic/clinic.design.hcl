# A rural clinic whose vaccine fridge must never warm up: four lithium batteries
# at 48 V, two roofs with a controller each on that one bank, and a generator
# for the rains. The fridge has its own 24 V converter straight from the bank,
# so that it does not depend on the inverter.

design "Two Rivers clinic" {
  revision = "D"
}

site {
  latitude  = "-1.9 deg"
  longitude = "34.2 deg"
  elevation = "1150 m"
  coldest   = "4 degC"
  hottest   = "40 degC"
  place     = "building"
}

# Four batteries side by side: 400 Ah, 20.5 kWh; 4 x 4.0 kA = 16 kA in a short
# circuit. They take 4 x 60 A = 240 A, and 180 A while one is away for repair.
bank "clinic" {
  battery                = "delta-100"
  series                 = 1
  parallel               = 4
  coldest                = "12 degC"
  hottest                = "36 degC"
  take_off               = "busbar"
  matched                = true
  low_voltage_disconnect = "45.6 V"

  each { # 60 A of charge x 1.25 = 75 A, so 80 A
    fuse {
      fuse     = "t-80"
      distance = "0.15 m"
    }
  }

  # In: 50 A + 50 A + 40 A = 140 A. Out: inverter 67 A + converter 8 A = 75 A.
  # 1.25 x 140 A = 175 A; with the controllers at their full 60 A, 200 A.
  main {
    cable_run {
      cable                = "veld-95"
      length               = "1 m"
      ambient              = "36 degC"
      method               = "free_air"
      cores                = "single"
      grouped              = 2
      per_pole             = 1
      terminal_temperature = "75 degC"
      indoors              = true
    }
    fuse {
      fuse     = "t-200"
      distance = "0.15 m"
    }
  }

  disconnect {
    rating     = "275 A"
    voltage    = "80 V"
    dc_rated   = true
    load_break = true
    poles      = 1
  }
}

# Two controllers on one bank: each has its own array, both carry the same
# settings, and their sum is what the bank must bear. The runs are sized for
# the rating, 1.25 x 60 A = 75 A, so 80 A.
charger "east" {
  controller = "dune-60"
  bank       = "clinic"
  hottest    = "44 degC" # it gives full power up to 45 degC
  clearance  = "250 mm"
  over_bank  = false
  settings {
    bank_voltage             = "48 V"
    charge_current           = "50 A"
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
    cable                = "veld-25"
    length               = "2 m"
    ambient              = "44 degC"
    method               = "free_air"
    cores                = "single"
    grouped              = 2
    per_pole             = 1
    terminal_temperature = "75 degC"
    indoors              = true
  }
  fuse {
    fuse     = "t-80"
    distance = "0.15 m"
  }
}

charger "west" {
  controller = "dune-60"
  bank       = "clinic"
  hottest    = "44 degC" # it gives full power up to 45 degC
  clearance  = "250 mm"
  over_bank  = false
  settings {
    bank_voltage             = "48 V"
    charge_current           = "50 A"
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
    cable                = "veld-25"
    length               = "2 m"
    ambient              = "44 degC"
    method               = "free_air"
    cores                = "single"
    grouped              = 2
    per_pole             = 1
    terminal_temperature = "75 degC"
    indoors              = true
  }
  fuse {
    fuse     = "t-80"
    distance = "0.15 m"
  }
}

# 3 x 49.6 V x (1 + 0.27 % x 21) = 157 V at 4 degC: under the controller's 200 V,
# and every device on the roof is made for 250 V or more. At noon in the heat
# the cells reach 78 degC and 3 x 41.5 V sink to about 98 V, still far above the
# 56.8 V of a full bank. Two like strings: a fault in one is fed by the other's
# 12.2 A alone, less than the 20 A its panels bear, so no string fuse is due.
# 2 x 12.2 A x 1.56 = 38 A, so 40 A.
array "east" {
  charger  = "east"
  tilt     = "10 deg"
  azimuth  = "90 deg"
  mounting = "roof_standoff"
  losses   = "12 %" # dust
  string "a" {
    panels   = { "acacia-450" = 3 }
    parallel = 2
    cable_run {
      cable                = "veld-6"
      length               = "4 m"
      ambient              = "70 degC"
      method               = "free_air"
      cores                = "single"
      grouped              = 2
      per_pole             = 1
      terminal_temperature = "75 degC"
      connector            = "kopje-4"
      indoors              = false
    }
  }
  cable_run {
    cable                = "veld-16"
    length               = "20 m"
    ambient              = "50 degC"
    method               = "conduit"
    cores                = "single"
    grouped              = 2
    per_pole             = 1
    terminal_temperature = "75 degC"
    above_roof           = "100 mm"
    indoors              = false
  }
  breaker {
    breaker  = "baffle-40"
    distance = "0.2 m"
  }
  disconnect {
    rating     = "40 A"
    voltage    = "500 V"
    dc_rated   = true
    load_break = true
    poles      = 2
  }
}

# The same on the afternoon's side.
array "west" {
  charger  = "west"
  tilt     = "10 deg"
  azimuth  = "270 deg"
  mounting = "roof_standoff"
  losses   = "12 %" # dust
  string "a" {
    panels   = { "acacia-450" = 3 }
    parallel = 2
    cable_run {
      cable                = "veld-6"
      length               = "4 m"
      ambient              = "70 degC"
      method               = "free_air"
      cores                = "single"
      grouped              = 2
      per_pole             = 1
      terminal_temperature = "75 degC"
      connector            = "kopje-4"
      indoors              = false
    }
  }
  cable_run {
    cable                = "veld-16"
    length               = "20 m"
    ambient              = "50 degC"
    method               = "conduit"
    cores                = "single"
    grouped              = 2
    per_pole             = 1
    terminal_temperature = "75 degC"
    above_roof           = "100 mm"
    indoors              = false
  }
  breaker {
    breaker  = "baffle-40"
    distance = "0.2 m"
  }
  disconnect {
    rating     = "40 A"
    voltage    = "500 V"
    dc_rated   = true
    load_break = true
    poles      = 2
  }
}

# A generator with its own charger, for weeks of rain. It may run while the sun
# charges: 140 A in all, under the 180 A of three batteries.
charge_source "generator" {
  bank               = "clinic"
  charge_current     = "40 A"
  charge_voltage     = "56.8 V"
  together           = true
  cold_charge_cutoff = "5 degC"
  cable_run {
    cable                = "veld-16"
    length               = "2.5 m"
    ambient              = "40 degC"
    method               = "free_air"
    cores                = "single"
    grouped              = 2
    per_pole             = 1
    terminal_temperature = "75 degC"
    indoors              = true
  }
  fuse { # 1.25 x 40 A = 50 A
    fuse     = "t-50"
    distance = "0.15 m"
  }
  disconnect {
    rating     = "80 A"
    voltage    = "80 V"
    dc_rated   = true
    load_break = true
    poles      = 1
  }
}

# It switches off at 48 V, well before the bank does at 45.6 V: what is left
# belongs to the fridge. 3000 W / (48 V x 93 %) = 67 A; 1.25 x 67 A = 84 A.
ac_output "clinic" {
  inverter      = "savanna-3000"
  bank          = "clinic"
  low_cutoff    = "48 V"
  hours_per_day = 24
  cable_run {
    cable                = "veld-35"
    length               = "1.2 m"
    ambient              = "40 degC"
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

load "laboratory" {
  from          = "ac_output.clinic"
  power         = "500 W"
  hours_per_day = 6
  between       = ["8 h", "16 h"]
  surge         = "900 W"
}

load "sterilizer" {
  from         = "ac_output.clinic"
  power        = "1800 W"
  daily_energy = "1.8 kWh"
  surge        = "2000 W"
}

# 24.5 V x 10 A / (36 V x 90 %) = 7.6 A from the bank; 1.25 x 7.6 A = 9.5 A.
supply "cold_chain" {
  converter = "rill-24"
  from      = "bank.clinic"
  cable_run {
    cable                = "veld-6"
    length               = "1 m"
    ambient              = "40 degC"
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

load "vaccine_fridge" {
  from         = "supply.cold_chain"
  power        = "110 W"
  daily_energy = "1.2 kWh"
  surge        = "210 W" # its compressor starting, within the converter's 245 W
  voltage_min  = "21 V"
  voltage_max  = "31 V"
  cable_run {
    cable                = "veld-6"
    length               = "4 m"
    ambient              = "40 degC"
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
  neutral_bonds           = 1 # in the inverter; the generator's own bond is taken out
  frames_bonded           = true
  ground_fault_protection = true
  surge_protection        = true
}
