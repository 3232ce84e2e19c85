# zero, minus zero and long decimals are numbers; the decoder judges them
load "a" {
  power = 0
  surge = -0
  hours_per_day = 0.30000000000000004
}
