load "a" {
  power = 1.2.3
  surge = 5.
  voltage_min = .5
}
