# expect: breaks us_2023.source_capacity on ac_output.shop

load "pump" {
  from          = "ac_output.shop"
  power         = "2600 W"
  surge         = "2.7 kW"
  hours_per_day = 0.5
  cable_run {
    size                 = "12 AWG"
    length               = "20 m"
    insulation           = "90 degC"
    voltage              = "600 V"
    ampacity             = "25 A"
    ambient              = "35 degC"
    method               = "conduit"
    cores                = "single"
    grouped              = 2
    indoors              = true
    terminal_temperature = "60 degC"
    declared "us_2023" {
      fine_strand_lugs = true
    }
  }
  breaker {
    rating     = "15 A"
    voltage    = "125 V"
    interrupts = "5 kA"
    dc_rated   = false
    polarized  = false
    poles      = 1
  }
  disconnect {
    rating     = "20 A"
    voltage    = "125 V"
    dc_rated   = false
    load_break = true
    poles      = 1
    declared "us_2023" {
      readily_accessible = true
      lockable           = true
    }
  }
}
