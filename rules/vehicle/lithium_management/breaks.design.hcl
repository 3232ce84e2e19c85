# expect: breaks vehicle.lithium_management on bank.house

bank "house" {
  battery                = "peat-100"
  series                 = 1
  parallel               = 2
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
      strand     = "class_5"
      insulation = "105 degC"
      voltage    = "600 V"
      ambient    = "35 degC"
      grouped    = 2
      declared "vehicle" {
        chassis_return = false
      }
    }
    fuse {
      class      = "T"
      rating     = "150 A"
      voltage    = "125 V"
      interrupts = "20 kA"
      dc_rated   = true
      distance   = "0.2 m"
      declared "vehicle" {
        enclosed_cable    = false
        outside_enclosure = false
      }
    }
  }
  disconnect {
    rating     = "200 A"
    voltage    = "80 V"
    dc_rated   = true
    load_break = true
  }
  declared "vehicle" {
    vented_outside    = true
    vent_area         = "16000 mm2"
    gas_current       = "4 A"
    sealed_from_cabin = true
    restrained        = true
    clear_of_services = true
    cell_standard     = "IEC 62619"
    listed            = true
  }
}

battery "peat-100" {
  chemistry             = "lifepo4"
  nominal               = "25.6 V"
  capacity              = "100 Ah"
  capacity_rate         = "5 h"
  cells                 = 8
  absorption_min        = "28.0 V"
  absorption_max        = "28.8 V"
  float_min             = "26.6 V"
  float_max             = "27.2 V"
  charge_current_max    = "60 A"
  discharge_current_max = "100 A"
  discharge_voltage_min = "22.0 V"
  charge_above          = "0 degC"
  charge_below          = "45 degC"
  discharge_above       = "-20 degC"
  usable                = "90 %"
  round_trip            = "95 %"
  short_circuit_current = "2 kA"
  series_max            = 2
  parallel_max          = 4
  heater                = true
  bms {
    charge_cutoff      = "80 A"
    discharge_cutoff   = "120 A"
    over_voltage       = "29.2 V"
    under_voltage      = "20.0 V"
    cold_charge_cutoff = "-10 degC"
    precharge          = true
  }
}
