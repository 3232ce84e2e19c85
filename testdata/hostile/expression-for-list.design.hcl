bank "a" {
  series = [for x in [1] : x]
}
