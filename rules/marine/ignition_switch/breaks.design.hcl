# expect: breaks marine.ignition_switch on disconnect.bank.house

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
      declared "marine" {
        petrol_space       = false
        ignition_protected = false
      }
    }
  }
  main {
    cable_run {
      size         = "70 mm2"
      length       = "1.2 m"
      strand       = "class_5"
      tinned       = true
      insulation   = "105 degC"
      voltage      = "600 V"
      ambient      = "35 degC"
      grouped      = 2
      sheathed     = false
      engine_space = false
    }
    fuse {
      class      = "T"
      rating     = "150 A"
      voltage    = "125 V"
      interrupts = "20 kA"
      dc_rated   = true
      distance   = "0.2 m"
      declared "marine" {
        petrol_space       = false
        ignition_protected = false
      }
    }
  }
  disconnect {
    rating     = "200 A"
    voltage    = "80 V"
    dc_rated   = true
    load_break = true
    declared "marine" {
      petrol_space       = true
      ignition_protected = false
    }
  }
  declared "marine" {
    restrained           = true
    terminals_covered    = true
    clear_of_fuel        = true
    vented               = true
    cold_cranking        = "900 A"
    cell_standard        = "IEC 62619 and IEC 62620"
    pre_alarm            = true
    remote_switch_direct = true
  }
}
