load "a" {
  power = b[*]
  surge = null.*.c
}
