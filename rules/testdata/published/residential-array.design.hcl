# A small residential stand-alone system at 12 V: ten modules of 51 W
# behind one breaker. After J. Wiles, Photovoltaic Power Systems and the National
# Electrical Code: Suggested Practices, Sandia National Laboratories, appendix of
# design examples (figures recomputed; those of the array as a whole and of the
# bank from memory). The modules' conductors lie at 68 degC, single in free air.

design "Published residential example, array as a whole" {
  revision = "A"
}

site {
  coldest = "-10 degC"
  hottest = "40 degC"
  place   = "building"
  declared "us_2023" {
    occupancy = "one_two_family"
    structure = "building"
  }
}

panel "twelve-volt-51" {
  pmax               = "51 W"
  voc                = "21.1 V"
  isc                = "3.25 A"
  vmp                = "17.0 V"
  imp                = "3.0 A"
  temp_voc           = "-0.35 %/K"
  technology         = "mono_si"
  max_system_voltage = "600 V"
  max_series_fuse    = "10 A"
}

controller "series-45" {
  kind               = "pwm"
  pv_voltage_max     = "60 V"
  pv_backfeed_max    = "0 A"
  charge_current_max = "45 A"
}

battery "lead-12" {
  chemistry             = "flooded"
  nominal               = "12 V"
  capacity              = "350 Ah"
  cells                 = 6
  short_circuit_current = "3 kA"
}

inverter "sine-500" {
  dc_min     = "10.75 V"
  continuous = "500 W"
  efficiency = "90 %"
  ac_voltage = "120 V"
}

bank "house" {
  battery                = "lead-12"
  series                 = 1
  parallel               = 1
  low_voltage_disconnect = "10.75 V"
  main {
    cable_run {
      size                 = "4 AWG"
      length               = "1 m"
      insulation           = "90 degC"
      ambient              = "30 degC"
      method               = "conduit"
      grouped              = 2
      terminal_temperature = "75 degC"
    }
    fuse {
      class  = "T"
      rating = "80 A"
    }
  }
}

charger "main" {
  controller = "series-45"
  bank       = "house"
  settings {
    charge_current = "45 A"
  }
}

array "whole" {
  charger = "main"
  string "a" {
    panels   = { "twelve-volt-51" = 1 }
    parallel = 10
  }
  cable_run {
    size       = "8 AWG"
    length     = "5 m"
    insulation = "90 degC"
    ambient    = "68 degC"
    method     = "free_air"
    cores      = "single"
    grouped    = 2
    indoors    = false
    declared "us_2023" {
      on_roof = false
    }
  }
  breaker {
    rating = "60 A"
  }
}

ac_output "house" {
  inverter   = "sine-500"
  bank       = "house"
  low_cutoff = "10.75 V"
  cable_run {
    size                 = "4 AWG"
    length               = "1 m"
    insulation           = "90 degC"
    ambient              = "30 degC"
    method               = "conduit"
    grouped              = 2
    terminal_temperature = "75 degC"
  }
  fuse {
    class  = "T"
    rating = "70 A"
  }
}

load "lights" { # 5 A at the lowest voltage
  from        = "bank.house"
  power       = "53.75 W"
  voltage_min = "10.75 V"
}
