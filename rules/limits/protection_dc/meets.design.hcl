# expect: meets limits.protection_dc on protection.array.south

load "freezer" {
  from  = "ac_output.cabin"
  power = "200 W"
  surge = "600 W"
  breaker {
    rating = "10 A"
  }
}
