# expect: breaks iec.bank_poles on bank.house (switch)
# expect: breaks iec.bank_poles on bank.house (device)

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
      poles      = 1
    }
  }
  disconnect {
    rating     = "200 A"
    voltage    = "80 V"
    dc_rated   = true
    load_break = true
    poles      = 1
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

grounding {
  dc                      = "floating"
  dc_bonds                = 0
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
