# expect: meets limits.polarity_marks on protection.array.south

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
      ampacity   = "40 A"
      ambient    = "45 degC"
      connector  = "heron-4"
    }
    fuse {
      class      = "gPV"
      rating     = "20 A"
      voltage    = "1000 V"
      interrupts = "10 kA"
      dc_rated   = true
    }
  }
  cable_run {
    size       = "16 mm2"
    length     = "12 m"
    insulation = "90 degC"
    voltage    = "1000 V"
    ampacity   = "80 A"
    ambient    = "40 degC"
  }
  breaker {
    rating     = "50 A"
    voltage    = "250 V"
    interrupts = "6 kA"
    dc_rated   = true
    polarized  = true
    poles      = 2
    declared "limits" {
      wired_by_marks = true
    }
  }
  disconnect {
    rating     = "63 A"
    voltage    = "250 V"
    dc_rated   = true
    load_break = true
    poles      = 2
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
    polarized  = true
  }
}
