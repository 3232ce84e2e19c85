bank "aÀ¯b" {}
