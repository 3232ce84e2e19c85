# expect: breaks limits.ventilation on bank.house

bank "house" {
  ventilated             = false
  battery                = "bog-12"
  series                 = 2
  parallel               = 3
  coldest                = "-5 degC"
  hottest                = "35 degC"
  take_off               = "busbar"
  matched                = true
  low_voltage_disconnect = "22.5 V"
  each {
    fuse {
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
      class      = "T"
      rating     = "150 A"
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
  }
}
