design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
load "a" {
  from = "bank.b"
  months = [1, 2, 3]
}
load "c" {
  from = "bank.b"
  months = [1,1,1,1,1,1,1,1,1,1,1,"x"]
}
load "d" {
  from = "bank.b"
  months = [1,1,1,1,1,1,1,1,1,1,1,-1]
}
bank "b" {}
