bank "ho\u200buse" {}
bank "h\ufeff" {}
bank "c\u200d" {}
