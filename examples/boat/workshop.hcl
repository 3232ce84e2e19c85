# Every design below this folder finds its parts here.
parts = ["parts/*.parts.hcl"]

# On this boat the engine runs most days of the year: the sun alone need not
# carry the winter. What it still gives is told all the same.
codebook "practice" {
  params {
    winter_cover_least_backed = "0 %"
  }
}
