bank "a\ud800" {}
bank "b\U00110000" {}
