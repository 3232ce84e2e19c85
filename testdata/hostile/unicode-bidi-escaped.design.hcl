bank "ho\u202euse" {}
bank "b\U00002067" {}
