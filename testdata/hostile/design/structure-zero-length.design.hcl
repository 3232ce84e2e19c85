design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
load "a" {
  from = "bank.b"
  cable_run {
    length = "0 m"
  }
  cable_run {
    length = "-1 m"
  }
}
bank "b" {}
