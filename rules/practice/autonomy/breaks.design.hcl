# expect: breaks practice.autonomy on bank.house

load "pump" {
  from          = "ac_output.cabin"
  power         = "700 W"
  surge         = "1.9 kW"
  hours_per_day = 6
}
