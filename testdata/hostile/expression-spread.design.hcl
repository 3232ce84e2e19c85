load "a" {
  power = [...]
  surge = a...
}
