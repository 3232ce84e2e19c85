# expect: breaks iec.array_device_size on protection.array.south

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
    rating     = "32 A"
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
