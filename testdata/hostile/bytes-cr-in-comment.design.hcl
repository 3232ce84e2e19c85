# a notesite {}
bank "house" {}
