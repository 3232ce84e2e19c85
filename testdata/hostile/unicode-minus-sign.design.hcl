load "a" {
  hours_per_day = −5
}
