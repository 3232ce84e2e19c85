load "a" {
  power = (5)
  surge = ((
    5
  ))
}
