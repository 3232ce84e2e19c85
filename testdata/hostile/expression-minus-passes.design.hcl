# the decoder judges the number
load "a" {
  hours_per_day = -5
  months = [-1, -2.5,
    -3]
}
string "s" {
  panels = { a = -1, b: -2 }
}
