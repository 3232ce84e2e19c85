# expect: meets limits.protection_carries on protection.charger.main

inverter "sedge-1500" {
  dc_min        = "20 V"
  dc_max        = "33 V"
  continuous    = "2500 W"
  surge         = "3000 W"
  surge_time    = "5 s"
  efficiency    = "85 %"
  idle          = "12 W"
  isolated      = true
  full_power_to = "40 degC"
  ac_voltage    = "230 V"
}

ac_output "cabin" {
  inverter   = "sedge-1500"
  bank       = "house"
  low_cutoff = "22 V"
  cable_run {
    size       = "35 mm2"
    length     = "1 m"
    insulation = "90 degC"
    voltage    = "600 V"
    ampacity   = "140 A"
    ambient    = "35 degC"
  }
  fuse {
    class      = "T"
    rating     = "175 A"
    voltage    = "125 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
  }
}

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
      rating     = "200 A"
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
