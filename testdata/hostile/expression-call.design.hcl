load "a" {
  power = max(1, 2)
}
