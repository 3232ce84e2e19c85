bank "a" {
  series = [for x in [for y in [for z in [] : z] : y] : x]
}
