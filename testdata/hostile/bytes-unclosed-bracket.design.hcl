design "a" {
  parts = ["x.parts.hcl"
