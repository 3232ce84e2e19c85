load "a" {
  power = null
}
