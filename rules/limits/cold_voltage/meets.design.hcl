# expect: meets limits.cold_voltage on pv_input.main.1

site {
  latitude  = "47 deg"
  longitude = "8 deg"
  elevation = "950 m"
  coldest   = "-10 degC"
  hottest   = "30 degC"
  place     = "building"
}

array "south" {
  charger  = "main"
  tilt     = "45 deg"
  azimuth  = "180 deg"
  mounting = "open_rack"
  string "a" {
    panels   = { "fen-200" = 1 }
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
    size       = "10 mm2"
    length     = "12 m"
    insulation = "90 degC"
    voltage    = "1000 V"
    ampacity   = "60 A"
    ambient    = "40 degC"
  }
  breaker {
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
  }
}

panel "fen-200" {
  pmax               = "200 W"
  voc                = "49.5 V"
  isc                = "10.4 A"
  vmp                = "20.4 V"
  imp                = "9.8 A"
  temp_voc           = "-0.27 %/K"
  temp_isc           = "0.045 %/K"
  temp_pmax          = "-0.34 %/K"
  noct               = "45 degC"
  cells              = 36
  technology         = "mono_si"
  max_system_voltage = "1000 V"
  max_series_fuse    = "20 A"
  connector          = "heron-4"
}
