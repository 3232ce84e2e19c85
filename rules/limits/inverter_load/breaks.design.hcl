# expect: breaks limits.inverter_load on ac_output.cabin

load "pump" {
  from          = "ac_output.cabin"
  power         = "1.8 kW"
  surge         = "1.9 kW"
  hours_per_day = 0.5
}
