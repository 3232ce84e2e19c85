site {
  place : "boat"
}
x : 1
