load "a" {
  power = 1,5
}
string "s" {
  panels = { a = 1,5 }
  months = [1,5]
}
