# expect: breaks marine.second_supply on load.lights

load "lights" {
  from          = "bank.house"
  power         = "30 W"
  surge         = "30 W"
  hours_per_day = 5
  voltage_min   = "21 V"
  voltage_max   = "30 V"
  cable_run {
    size         = "2.5 mm2"
    length       = "8 m"
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
    class      = "other"
    rating     = "5 A"
    voltage    = "32 V"
    interrupts = "10 kA"
    dc_rated   = true
    distance   = "0.2 m"
    declared "marine" {
      petrol_space       = false
      ignition_protected = false
    }
  }
  declared "marine" {
    critical      = true
    second_source = false
  }
}
