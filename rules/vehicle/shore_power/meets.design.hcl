# expect: meets vehicle.shore_power on charge_source.shore (separation)
# expect: meets vehicle.shore_power on charge_source.shore (residual current)

charge_source "shore" {
  bank               = "house"
  charge_current     = "20 A"
  charge_voltage     = "28.6 V"
  cold_charge_cutoff = "5 degC"
  together           = false
  cable_run {
    size       = "10 mm2"
    length     = "2 m"
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
    rating     = "30 A"
    voltage    = "125 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
  }
  declared "vehicle" {
    self_limiting    = true
    device_at_source = "0 m"
    shore_power      = true
    mains_separated  = true
    residual_current = "30 mA"
  }
}
