load "a" {
  power = 1 + 2
  surge = 1 == 2
  hours_per_day = !true
  voltage_min = 1 - 2
  voltage_max = 2 -1
  months = 1 && 0 || 3
  between = 1 <= 2
  from = --5
}
