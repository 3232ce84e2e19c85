# expect: meets limits.disconnect_voltage on disconnect.array.south

load "freezer" {
  from  = "ac_output.cabin"
  power = "200 W"
  surge = "600 W"
  disconnect {
    rating = "10 A"
  }
}
