# expect: breaks marine.shore_power on charge_source.shore (separation)
# expect: breaks marine.shore_power on charge_source.shore (residual current)

charge_source "shore" {
  bank               = "start"
  charge_current     = "15 A"
  charge_voltage     = "28.8 V"
  cold_charge_cutoff = "-20 degC"
  together           = true
  cable_run {
    size         = "10 mm2"
    length       = "2 m"
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
    rating     = "25 A"
    voltage    = "125 V"
    interrupts = "20 kA"
    dc_rated   = true
    distance   = "0.2 m"
    declared "marine" {
      petrol_space       = false
      ignition_protected = false
    }
  }
  declared "marine" {
    self_limiting       = true
    device_at_source    = "0 m"
    protected_from_loss = true
    shore_power         = true
    mains_separated     = false
    residual_current    = "300 mA"
    shore_isolation     = "galvanic_isolator"
  }
}
