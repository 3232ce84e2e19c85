# The same clinic after its lead bank was changed for lithium in a hurry. Lay it
# beside clinic.design.hcl: every difference is a mistake that is often made, and
# "wrong:" says which.

design "Two Rivers clinic, after the change of batteries" {
  revision = "D"
}

# wrong: the second roof's controller came used and without its data sheet. What
# is not known is left out here: an invented figure would pass for a known one.
controller "bartered-60" {
  kind               = "mppt"
  charge_current_max = "60 A"
  bank_voltages      = ["24 V", "48 V"]
  start_above_bank   = "5 V"
  run_above_bank     = "1 V"
  efficiency         = "97 %"
  idle               = "2 W"
  full_power_to      = "45 degC"
  derate             = "2 %/K"
  altitude_max       = "3000 m"
  common             = "negative"
  isolated           = false
}

site {
  latitude  = "-1.9 deg"
  longitude = "34.2 deg"
  elevation = "1150 m"
  coldest   = "4 degC"
  hottest   = "40 degC"
  place     = "building"
}

# wrong: the cheaper type, whose management system lets 30 A in. 4 x 30 A = 120 A,
# and sun and generator bring 60 A + 50 A + 40 A = 150 A: it disconnects at noon,
# and the controllers stand under sun without a battery.
bank "clinic" {
  battery                = "delta-100-lean"
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

  # In: 60 A + 50 A + 40 A = 150 A. Out: inverter 67 A + converter 8 A = 75 A.
  # 1.25 x 150 A = 188 A; with both controllers at their full 60 A, 200 A.
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
    # wrong: it breaks 10 kA and four batteries give 16 kA: it would burst. And it
    # is made for 32 V, on a bank that is charged at 57 V and, equalized, at 63 V.
    fuse {
      class            = "ANL"
      rating           = "200 A"
      voltage          = "32 V"
      interrupts       = "10 kA"
      dc_rated         = true
      continuous_rated = false
      distance         = "0.15 m"
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
  # wrong: the preset for open lead is still in. Absorption above what the cells
  # bear, an equalizing charge at 62 V, set-points that follow the temperature,
  # and a float that keeps lithium full for ever. The other controller charges by
  # another profile, so the two work against each other.
  settings {
    bank_voltage             = "48 V"
    charge_current           = "60 A"
    absorption               = "58.8 V"
    float                    = "55.6 V"
    equalize                 = true
    equalize_voltage         = "62.0 V"
    temperature_compensation = "-4 mV/K"
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
  controller = "bartered-60"
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
  neutral_bonds           = 2 # wrong: the inverter's and the generator's; fault current splits, no breaker trips
  frames_bonded           = true
  ground_fault_protection = true
  surge_protection        = true
}
