# Every design below this folder finds its parts here.
parts = ["parts/*.parts.hcl"]
