# The system that the examples of this book share: a cabin at 24 V with two
# strings on a roof. Every rule meets on it, or does not apply.

design "Reed Hollow cabin" {
  revision = "A"
}

site {
  latitude  = "47 deg"
  longitude = "8 deg"
  elevation = "950 m"
  coldest   = "-20 degC"
  hottest   = "30 degC"
  place     = "building"
  declared "iec" {
    critical_length = "46 m"
  }
}

bank "house" {
  battery                = "bog-12"
  series                 = 2
  parallel               = 2
  coldest                = "5 degC"
  hottest                = "35 degC"
  take_off               = "busbar"
  matched                = true
  low_voltage_disconnect = "23.0 V"
  each {
    fuse {
      class      = "gG"
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
      ambient    = "35 degC"
      grouped    = 2
      method     = "surface"
      cores      = "single"
    }
    fuse {
      class      = "gG"
      rating     = "160 A"
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
    poles      = 2
  }
  declared "iec" {
    ventilation        = "natural"
    vent_area          = "160 cm2"
    forced_air         = "6 m3/h"
    gas_current        = "4 A"
    spark_distance     = "0.7 m"
    terminals_shrouded = true
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
    absorption               = "28.8 V"
    float                    = "26.8 V"
    equalize                 = false
    temperature_compensation = "-4 mV/K"
    bank_temperature_sensor  = true
    passcode_changed         = true
    locked                   = true
  }
  cable_run {
    size       = "25 mm2"
    length     = "1.5 m"
    insulation = "90 degC"
    voltage    = "600 V"
    ambient    = "35 degC"
    grouped    = 2
    method     = "surface"
    cores      = "single"
    declared "iec" {
      single_layer = true
    }
  }
  breaker {
    class      = "C"
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
      ambient    = "45 degC"
      grouped    = 2
      method     = "surface"
      cores      = "single"
      connector  = "heron-4"
      declared "iec" {
        under_modules = true
      }
    }
    fuse {
      class      = "gPV"
      rating     = "16 A"
      voltage    = "1000 V"
      interrupts = "10 kA"
      dc_rated   = true
    }
    declared "iec" {
      class_two               = true
      insulation_resistance   = "4 Mohm"
      insulation_test_voltage = "250 V"
    }
  }
  cable_run {
    size       = "16 mm2"
    length     = "12 m"
    insulation = "90 degC"
    voltage    = "1000 V"
    ambient    = "45 degC"
    grouped    = 2
    method     = "conduit"
    cores      = "single"
    declared "iec" {
      under_modules = false
    }
  }
  breaker {
    class      = "C"
    rating     = "40 A"
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
    declared "iec" {
      category = "PV2"
    }
  }
  declared "iec" {
    spd_ucpv = "150 V"
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
    ambient    = "35 degC"
    grouped    = 2
    method     = "surface"
    cores      = "single"
  }
  fuse {
    class      = "gG"
    rating     = "100 A"
    voltage    = "125 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
  }
  declared "iec" {
    residual_type    = "A"
    residual_current = "30 mA"
  }
}

load "lights" {
  from          = "bank.house"
  power         = "60 W"
  surge         = "60 W"
  hours_per_day = 5
  voltage_min   = "21 V"
  voltage_max   = "32 V"
  cable_run {
    size       = "4 mm2"
    length     = "8 m"
    insulation = "70 degC"
    voltage    = "600 V"
    ambient    = "30 degC"
    grouped    = 2
    method     = "conduit"
    cores      = "multi"
    declared "iec" {
      perforated   = true
      single_layer = true
    }
  }
  fuse {
    class      = "gG"
    rating     = "6 A"
    voltage    = "58 V"
    interrupts = "10 kA"
    dc_rated   = true
    distance   = "0.2 m"
  }
  declared "iec" {
    lighting = true
  }
}

load "pump" {
  from          = "ac_output.cabin"
  power         = "700 W"
  surge         = "1.9 kW"
  hours_per_day = 0.5
  declared "iec" {
    lighting = false
  }
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
    ambient    = "40 degC"
    grouped    = 2
    method     = "direct_buried"
    cores      = "multi"
    declared "iec" {
      ground_temperature = "20 degC"
    }
  }
  fuse {
    class      = "gG"
    rating     = "63 A"
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
  declared "iec" {
    bond_size          = "6 mm2"
    earthing           = "solid"
    insulation_monitor = false
  }
}

reading "south-a-open" {
  title            = "open circuit, before connecting"
  of               = "string.south.a.voc"
  value            = "68.0 V"
  taken            = "2026-05-02"
  cell_temperature = "41 degC"
  irradiance       = "820 W/m2"
}
