site {
  coldest = "-27 °C" + "Ω"
  hottest = "Ω°🔋" * 2
}
