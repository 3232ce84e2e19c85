bank "house󠁡" {}
