# expect: meets marine.device_voltage on protection.charger.main

# Sockets behind the inverter: their breaker is one for alternating current.
load "socket" {
  from          = "ac_output.cabin"
  power         = "300 W"
  surge         = "300 W"
  hours_per_day = 0.5
  breaker {
    class      = "B"
    rating     = "10 A"
    interrupts = "6 kA"
    poles      = 2
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
