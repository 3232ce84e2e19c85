# expect: breaks us_2023.conductor_smallest on cable_run.load.lights

load "lights" {
  from          = "bank.house"
  power         = "60 W"
  surge         = "60 W"
  hours_per_day = 5
  voltage_min   = "42 V"
  voltage_max   = "60 V"
  cable_run {
    size                 = "16 AWG"
    length               = "8 m"
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
  fuse {
    class      = "other"
    rating     = "10 A"
    voltage    = "60 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
    declared "us_2023" {
      at_source = true
    }
  }
}
