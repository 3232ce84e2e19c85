site {
  place = "boat"

bank "house" {
  series = 1
}
