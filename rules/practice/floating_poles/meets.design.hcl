# expect: meets practice.floating_poles on grounding (devices)
# expect: meets practice.floating_poles on grounding (switches)

bank "house" {
  battery                = "peat-100"
  series                 = 1
  parallel               = 3
  coldest                = "-5 degC"
  hottest                = "35 degC"
  take_off               = "busbar"
  matched                = true
  low_voltage_disconnect = "22.5 V"
  each {
    fuse {
      poles      = 2
      class      = "T"
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
      ampacity   = "220 A"
      ambient    = "35 degC"
    }
    fuse {
      poles      = 2
      class      = "T"
      rating     = "150 A"
      voltage    = "125 V"
      interrupts = "20 kA"
      dc_rated   = true
      distance   = "0.2 m"
    }
  }
  disconnect {
    poles      = 2
    rating     = "200 A"
    voltage    = "80 V"
    dc_rated   = true
    load_break = true
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
    size       = "25 mm2"
    length     = "1.5 m"
    insulation = "90 degC"
    voltage    = "600 V"
    ampacity   = "110 A"
    ambient    = "35 degC"
  }
  breaker {
    poles      = 2
    rating     = "100 A"
    voltage    = "80 V"
    interrupts = "10 kA"
    dc_rated   = true
    polarized  = false
    distance   = "0.2 m"
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
    ampacity   = "140 A"
    ambient    = "35 degC"
  }
  fuse {
    poles      = 2
    class      = "T"
    rating     = "100 A"
    voltage    = "125 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
  }
}

load "lights" {
  from          = "bank.house"
  power         = "60 W"
  surge         = "60 W"
  hours_per_day = 5
  voltage_min   = "21 V"
  voltage_max   = "30 V"
  cable_run {
    size       = "2.5 mm2"
    length     = "8 m"
    insulation = "90 degC"
    voltage    = "600 V"
    ampacity   = "20 A"
    ambient    = "35 degC"
  }
  fuse {
    poles      = 2
    class      = "other"
    rating     = "5 A"
    voltage    = "32 V"
    interrupts = "10 kA"
    dc_rated   = true
    distance   = "0.2 m"
  }
}

supply "twelve" {
  converter = "rush-20"
  from      = "bank.house"
  cable_run {
    size       = "4 mm2"
    length     = "1.5 m"
    insulation = "90 degC"
    voltage    = "600 V"
    ampacity   = "35 A"
    ambient    = "35 degC"
  }
  fuse {
    poles      = 2
    class      = "other"
    rating     = "20 A"
    voltage    = "58 V"
    interrupts = "10 kA"
    dc_rated   = true
    distance   = "0.2 m"
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
    ampacity   = "80 A"
    ambient    = "40 degC"
  }
  fuse {
    poles      = 2
    class      = "T"
    rating     = "60 A"
    voltage    = "125 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
  }
}

load "pump" {
  from          = "ac_output.cabin"
  power         = "700 W"
  surge         = "1.9 kW"
  hours_per_day = 0.5
  cable_run {
    size       = "2.5 mm2"
    length     = "8 m"
    insulation = "90 degC"
    voltage    = "600 V"
    ampacity   = "20 A"
    ambient    = "35 degC"
  }
  breaker {
    rating     = "16 A"
    voltage    = "250 V"
    interrupts = "6 kA"
    dc_rated   = false
    poles      = 1
  }
  disconnect {
    rating     = "20 A"
    voltage    = "250 V"
    dc_rated   = false
    load_break = true
    poles      = 1
  }
}

grounding {
  dc                      = "floating"
  dc_bonds                = 0
  neutral_bonds           = 1
  frames_bonded           = true
  ground_fault_protection = true
  surge_protection        = true
}
