bank "ho‮use" {}
