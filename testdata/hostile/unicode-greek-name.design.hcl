panel "slate" {
  vοc = "37.4 V"
}
