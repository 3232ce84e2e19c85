# expect: breaks us_2023.source_capacity on ac_output.shop

load "pump" {
  from          = "ac_output.shop"
  power         = "2600 W"
  surge         = "2.7 kW"
  hours_per_day = 0.5
}
