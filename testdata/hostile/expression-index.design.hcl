load "a" {
  power = b[0]
  surge = [1, 2][0]
}
