load "a" {
  power = true ? 1 : "a"
}
