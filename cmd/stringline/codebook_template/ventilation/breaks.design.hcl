# expect: breaks bookname.ventilation on bank.house

bank "house" {
  battery  = "bog-12"
  series   = 2
  parallel = 1
  coldest  = "0 degC"
  hottest  = "30 degC"
  declared "bookname" {
    vented = false
  }
}
