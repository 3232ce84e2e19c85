# A workshop is a folder of designs that share their parts. This file says once
# where those parts are; it applies to every design below this folder.
parts = ["parts/*.parts.hcl"]
