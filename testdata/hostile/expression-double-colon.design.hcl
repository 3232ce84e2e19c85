load "a" {
  power = core::max
}
