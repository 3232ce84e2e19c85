load "a" {
  power = 010
  surge = 00
  hours_per_day = 0
  voltage_min = 0.10
}
