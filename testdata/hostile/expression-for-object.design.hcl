string "a" {
  panels = {for k, v in x : k => v}
}
