design "Fell hut" {
  parts = ["../../outside.parts.hcl", "/etc/x.parts.hcl", "nothing-*.parts.hcl", "[", "", "a\\b.parts.hcl", "C:/x.parts.hcl"]
}
