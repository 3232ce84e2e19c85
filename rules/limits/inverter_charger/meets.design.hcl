# expect: meets limits.inverter_charger on ac_output.cabin

inverter "sedge-1500" {
  dc_min             = "20 V"
  dc_max             = "33 V"
  continuous         = "1500 W"
  surge              = "3000 W"
  surge_time         = "5 s"
  efficiency         = "92 %"
  idle               = "12 W"
  isolated           = true
  charge_current_max = "35 A"
  full_power_to      = "40 degC"
  ac_voltage         = "230 V"
}

charge_source "engine" {
  bank               = "house"
  charge_current     = "40 A"
  charge_voltage     = "28.6 V"
  cold_charge_cutoff = "5 degC"
  together           = true
  cable_run {
    size       = "16 mm2"
    length     = "3 m"
    insulation = "90 degC"
    voltage    = "600 V"
    ampacity   = "80 A"
    ambient    = "40 degC"
  }
  fuse {
    class      = "T"
    rating     = "60 A"
    voltage    = "125 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
  }
  declared "limits" {
    through_inverter = true
  }
}
