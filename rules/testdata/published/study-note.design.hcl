# The string of a published study note on the 2023 code: Isc 11.2 A, 10 AWG of
# 90 degC insulation at 45 degC (recomputed from the note's inputs).

design "Published study note, string of 11.2 A" {
  revision = "A"
}

site {
  coldest = "-20 degC"
  hottest = "40 degC"
  place   = "building"
  declared "us_2023" {
    occupancy = "one_two_family"
    structure = "building"
  }
}

panel "note-400" {
  pmax               = "400 W"
  voc                = "45.0 V"
  isc                = "11.2 A"
  temp_voc           = "-0.27 %/K"
  technology         = "mono_si"
  max_system_voltage = "1000 V"
  max_series_fuse    = "20 A"
}

controller "tracker-60" {
  kind               = "mppt"
  pv_voltage_max     = "200 V"
  pv_backfeed_max    = "0 A"
  charge_current_max = "60 A"
}

battery "iron-51" {
  chemistry = "lifepo4"
  nominal   = "51.2 V"
  capacity  = "100 Ah"
  cells     = 16
}

inverter "sine-2500" {
  dc_min     = "22 V"
  continuous = "2500 W"
  efficiency = "85 %"
}

bank "house" {
  battery  = "iron-51"
  series   = 1
  parallel = 1
}

charger "main" {
  controller = "tracker-60"
  bank       = "house"
}

array "south" {
  charger = "main"
  string "a" {
    panels = { "note-400" = 3 }
    cable_run {
      size       = "10 AWG"
      length     = "10 m"
      insulation = "90 degC"
      ambient    = "45 degC"
      method     = "conduit"
      grouped    = 2
      indoors    = false
      declared "us_2023" {
        on_roof = false
      }
    }
    fuse {
      class  = "gPV"
      rating = "20 A"
    }
  }
}

ac_output "house" { # 2500 W at 22 V and 85 %: 133.7 A
  inverter = "sine-2500"
  bank     = "house"
  cable_run {
    size                 = "2/0 AWG"
    length               = "1 m"
    insulation           = "90 degC"
    ambient              = "30 degC"
    method               = "conduit"
    grouped              = 2
    terminal_temperature = "75 degC"
  }
  fuse {
    class  = "T"
    rating = "175 A"
  }
}
