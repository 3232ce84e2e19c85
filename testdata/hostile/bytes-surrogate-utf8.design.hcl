bank "aí €b" {}
