load "a" {
  power = load.a.power
}
