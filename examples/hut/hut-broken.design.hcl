# The same hut as it was found. Lay it beside hut.design.hcl: every difference is
# a mistake that is often made, and "wrong:" says which.

design "Larch Col hut, as found" {
  revision = "C"
}

site {
  latitude  = "46.52 deg"
  longitude = "9.87 deg"
  elevation = "1840 m"
  coldest   = "-27 degC" # the extreme low, not an average: volts follow it
  hottest   = "29 degC"
  place     = "building"
}

# Two batteries of 25.6 V and 200 Ah side by side: 400 Ah, 10.2 kWh. In a short
# circuit each gives 4.6 kA, both together 9.2 kA: what must break it is chosen
# for that, not for the current of an ordinary day.
bank "house" {
  battery                = "fell-200"
  series                 = 1
  parallel               = 2
  coldest                = "-8 degC" # wrong: now in the woodshed, too cold to be charged for weeks
  hottest                = "25 degC"
  take_off               = "diagonal" # plus from one end, minus from the other
  matched                = true       # bought together, joined within 0.05 V
  low_voltage_disconnect = "23.2 V"   # well above the 20.8 V that hurts the cells

  each { # one fuse for each battery, or the good one feeds the bad one
    fuse {
      fuse     = "t-150"
      distance = "0.15 m"
    }
  }

  # All current passes here. Out: inverter 92 A + converter 14 A + lights 3 A
  # = 109 A. In: 80 A. 1.25 x 109 A = 136 A, so 150 A is the next size.
  main {
    cable_run {
      cable                = "flex-70"
      length               = "1.2 m" # one way; drop is counted on both wires
      ambient              = "30 degC"
      method               = "free_air"
      cores                = "single"
      grouped              = 2
      per_pole             = 1
      terminal_temperature = "75 degC"
      indoors              = true
    }
    # wrong: the bank gives 9.2 kA and this fuse breaks 6 kA; and it sits by the
    # inverter, so that 1.2 m of cable can burn with nothing to stop it.
    fuse {
      class            = "ANL"
      rating           = "150 A"
      voltage          = "80 V"
      interrupts       = "6 kA"
      dc_rated         = true
      continuous_rated = false
      distance         = "1.2 m"
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

charger "main" {
  # wrong: "2 x 37.4 V = 74.8 V, it takes 75 V." That is at 25 degC. On the
  # coldest morning the strings reach 84.9 V and the input is destroyed.
  controller = "ford-85"
  bank       = "house"
  # wrong: boxed in under the roof. From 40 degC on it gives less: 85 A x 84 %.
  hottest   = "48 degC"
  clearance = "200 mm" # its maker asks for 150 mm of clear air
  over_bank = false    # beside the bank, never above it

  # Lithium iron phosphate: a moderate absorption, a low float, no equalizing,
  # no temperature compensation, no charging in the cold.
  settings {
    bank_voltage             = "24 V" # set by hand: detection works once at best
    charge_current           = "80 A" # one battery alone still takes 100 A
    absorption               = "28.4 V"
    float                    = "27.0 V"
    equalize                 = false
    temperature_compensation = "0 mV/K"
    cold_charge_cutoff       = "-5 degC" # wrong: below 0 degC the batteries stop it themselves, under sun
    bank_temperature_sensor  = true
    passcode_changed         = false # wrong: anyone nearby can change the settings by radio
    locked                   = true
  }

  # The run and its breaker are sized for the rating of 85 A, not the setting,
  # for a setting can be lost: 1.25 x 85 A = 106 A, so 125 A.
  cable_run {
    cable                = "flex-35"
    length               = "1.5 m"
    ambient              = "35 degC"
    method               = "free_air"
    cores                = "single"
    grouped              = 2
    per_pole             = 1
    terminal_temperature = "75 degC"
    indoors              = true
  }
  # wrong: polarized. It puts out its arc in one direction only; in a fault of the
  # controller the bank drives the current the other way, and it burns.
  breaker {
    rating           = "125 A"
    voltage          = "80 V"
    interrupts       = "10 kA"
    dc_rated         = true
    polarized        = true
    poles            = 1
    continuous_rated = false
    distance         = "0.15 m"
  }
}

# Coldest morning, cells at -27 degC, 52 K below 25:
#   a  2 x 37.4 V x (1 + 0.26 % x 52) = 84.9 V
#   b  2 x 36.9 V x (1 + 0.27 % x 52) = 84.2 V   both over the 75 V of this input.
# In parallel the strings must agree in voltage: at best power 62.8 V and 61.8 V.
# Power 4 x 410 W + 2 x 335 W = 2310 W, 113 % of 24 V x 85 A.
array "south" {
  charger  = "main"
  tilt     = "45 deg"
  azimuth  = "180 deg"
  mounting = "open_rack"
  losses   = "8 %"

  # A fault in one string is fed by the two others:
  #   into a  13.95 A + 11.52 A = 25.5 A, more than the 25 A its panels bear
  #   into b  13.95 A + 13.95 A = 27.9 A, more than the 20 A its panels bear
  # so every string needs a fuse: at least 1.56 x Isc (21.8 A, 18.0 A), at most
  # what the panel allows (25 A, 20 A).
  string "a" {
    panels   = { "slate-410" = 2 }
    parallel = 2
    cable_run {
      cable                = "solar-6"
      length               = "3 m"
      ambient              = "60 degC" # behind warm panels
      method               = "free_air"
      cores                = "single"
      grouped              = 2
      per_pole             = 1
      terminal_temperature = "75 degC"
      connector            = "tarn-4" # the panels' own make, never a lookalike
      indoors              = false
    }
    fuse { # wrong: 32 A "so that it never blows"; the panels bear 25 A
      class            = "gPV"
      rating           = "32 A"
      voltage          = "1000 V"
      interrupts       = "30 kA"
      dc_rated         = true
      continuous_rated = false
      distance         = "0.2 m"
    }
  }

  string "b" {
    panels   = { "dusk-335" = 2 }
    parallel = 1
    cable_run {
      cable                = "solar-6"
      length               = "3 m"
      ambient              = "60 degC"
      method               = "free_air"
      cores                = "single"
      grouped              = 2
      per_pole             = 1
      terminal_temperature = "75 degC"
      connector            = "tarn-4"
      indoors              = false
    }
    # wrong: no fuse. Two strings beside it feed 27.9 A into a fault here, and
    # these panels bear 20 A.
  }

  # Together 13.95 + 13.95 + 11.52 = 39.4 A; 1.56 x 39.4 A = 61.6 A, so 63 A.
  cable_run {
    cable                = "flex-25"
    length               = "10 m"
    ambient              = "45 degC"
    method               = "conduit"
    cores                = "single"
    grouped              = 2
    per_pole             = 1
    terminal_temperature = "75 degC"
    above_roof           = "100 mm"
    indoors              = false
  }
  # wrong: a house breaker, 230 V AC. Direct current has no zero at which its arc
  # could go out; on DC its maker allows 60 V.
  breaker {
    rating           = "63 A"
    voltage          = "60 V"
    interrupts       = "6 kA"
    dc_rated         = false
    polarized        = false
    poles            = 2
    continuous_rated = false
    distance         = "0.2 m"
  }
  disconnect { # panels are live in any light: this parts both poles
    rating     = "63 A"
    voltage    = "250 V"
    dc_rated   = true
    load_break = true
    poles      = 2
  }
}

# 2000 W / (23.6 V x 92 %) = 92 A at the lowest voltage, which is when the
# current is highest; 1.25 x 92 A = 115 A, so 125 A. The pump starts on 1.9 kW.
ac_output "cabin" {
  inverter      = "moor-2000"
  bank          = "house"
  low_cutoff    = "23.6 V" # a little before the bank's own disconnect
  hours_per_day = 10
  cable_run {
    cable                = "flex-50"
    length               = "1.2 m"
    ambient              = "30 degC"
    method               = "free_air"
    cores                = "single"
    grouped              = 2
    per_pole             = 1
    terminal_temperature = "75 degC"
    indoors              = true
  }
  fuse { # wrong: 80 A for a current of 92 A; it blows whenever the stove is on
    class            = "T"
    rating           = "80 A"
    voltage          = "125 V"
    interrupts       = "20 kA"
    dc_rated         = true
    continuous_rated = false
    distance         = "0.15 m"
  }
  disconnect {
    rating     = "200 A"
    voltage    = "80 V"
    dc_rated   = true
    load_break = true
    poles      = 1
  }
}

load "pump" {
  from          = "ac_output.cabin"
  power         = "700 W"
  hours_per_day = 0.5
  surge         = "1.9 kW"
}

load "kitchen" {
  from         = "ac_output.cabin"
  power        = "900 W"
  daily_energy = "1.1 kWh"
  surge        = "900 W" # heat draws no more at the start
}

load "lights" {
  from          = "bank.house"
  power         = "60 W"
  hours_per_day = 5
  between       = ["17 h", "22 h"]
  surge         = "60 W"
  voltage_min   = "21 V" # works over the bank's whole range, 23.2 V to 28.4 V
  voltage_max   = "30 V"
  cable_run {
    size                 = "4 mm2"
    material             = "Cu"
    strand               = "class_5"
    tinned               = false
    insulation           = "90 degC"
    voltage              = "500 V"
    ampacity             = "32 A"
    length               = "6 m"
    ambient              = "30 degC"
    method               = "surface"
    cores                = "multi"
    sheathed             = true
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

# 12.5 V x 20 A / (20 V x 92 %) = 13.6 A taken from the bank; 1.25 x 13.6 A = 17 A.
supply "twelve" {
  converter = "brook-20"
  from      = "bank.house"
  cable_run {
    cable                = "solar-6"
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
    fuse     = "t-20"
    distance = "0.15 m"
  }
}

load "radio" {
  from          = "supply.twelve"
  power         = "36 W"
  surge         = "36 W" # electronics: it draws no more at the start
  hours_per_day = 4
  voltage_min   = "11.5 V"
  voltage_max   = "14.5 V"
  cable_run {
    size                 = "2.5 mm2"
    material             = "Cu"
    strand               = "class_5"
    tinned               = false
    insulation           = "90 degC"
    voltage              = "500 V"
    ampacity             = "25 A"
    length               = "3 m"
    ambient              = "30 degC"
    method               = "surface"
    cores                = "multi"
    sheathed             = true
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

# What the meter showed before the panels were joined to the controller. Cells at
# 38 degC have lost 3 % of the 74.8 V.
reading "south-a-open" {
  title            = "string a, left of the door, open circuit"
  of               = "string.south.a.voc"
  value            = "72.1 V"
  taken            = "2026-09-12"
  cell_temperature = "38 degC"
  irradiance       = "870 W/m2"
}

grounding {
  dc                      = "negative"
  dc_bonds                = 1 # one, at the bank's negative bar
  neutral_bonds           = 1 # one, in the inverter
  frames_bonded           = true
  ground_fault_protection = true
  surge_protection        = true
}
