site {
  place = 'boat'
  weather = `a`;
  hottest = 1; coldest = 2
  @x = 3
  y = $z
  w = a\b
}
