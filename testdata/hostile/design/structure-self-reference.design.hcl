design "Fell hut" {}
site {
  latitude = "46 deg"
  longitude = "9 deg"
  elevation = "900 m"
}
load "l" {
  from = "load.l"
}
supply "s" {
  from = "supply.s"
}
supply "t" {
  from = "supply.u"
}
supply "u" {
  from = "supply.t"
}
