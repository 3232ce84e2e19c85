# expect: breaks limits.load_power on load.pump

load "pump" {
  from          = "ac_output.cabin"
  power         = "700 W"
  surge         = "4 kW"
  hours_per_day = 0.5
}
