load "a" {
  power = 1e400
  surge = 1e-400
  hours_per_day = 1e999999
  months = [1E+10000000, 2.5e3]
}
