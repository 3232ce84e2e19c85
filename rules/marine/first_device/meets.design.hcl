# expect: meets marine.first_device on protection.charger.main

load "pump" {
  from          = "ac_output.cabin"
  power         = "30 W"
  surge         = "30 W"
  hours_per_day = 0.5
  cable_run {
    size         = "2.5 mm2"
    length       = "4 m"
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
    voltage    = "250 V"
    interrupts = "10 kA"
    dc_rated   = true
    distance   = "0.2 m"
    declared "marine" {
      petrol_space       = false
      ignition_protected = false
    }
  }
  declared "marine" {
    critical      = false
    second_source = false
  }
}
