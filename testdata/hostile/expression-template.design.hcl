site {
  place = "${var.place}"
  weather = "%{if true}a%{endif}"
}
