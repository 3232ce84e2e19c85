waiver "a.b" {
  expires = 2027-04-01
}
