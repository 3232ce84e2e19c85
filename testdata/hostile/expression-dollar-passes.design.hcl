# a sign alone is text
cable "usd$" {
  size = "5 $"
}
panel "b" {
  tolerance = "3 %"
}
load "$ {" {}
