# expect: breaks us_2023.gfci on ac_output.shop

ac_output "shop" {
  inverter   = "basin-2400"
  bank       = "house"
  low_cutoff = "46 V"
  declared "us_2023" {
    gfci        = false
    listed      = true
    split_panel = false
    multiwire   = false
  }
  cable_run {
    size                 = "3 AWG"
    length               = "1 m"
    insulation           = "90 degC"
    voltage              = "600 V"
    ampacity             = "105 A"
    ambient              = "35 degC"
    method               = "conduit"
    cores                = "single"
    grouped              = 2
    indoors              = true
    terminal_temperature = "75 degC"
    declared "us_2023" {
      fine_strand_lugs = true
    }
  }
  fuse {
    class      = "T"
    rating     = "80 A"
    voltage    = "125 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
    declared "us_2023" {
      at_source = true
    }
  }
}
