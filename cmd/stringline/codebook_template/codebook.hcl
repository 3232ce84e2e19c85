# A codebook is a set of rules. This file says what it is; each folder beside it
# is one rule. `stringline codebook test` tells whether they hold together.
name    = "bookname"
version = "0.1.0"
needs   = "0.1"

# Where a rule or a table comes from, and how it was read: "read", "transcribed"
# or "from memory". Rules name a source under cites, tables under source.
source "workshop" {
  title  = "The workshop's own practice"
  status = "read"
}

# A figure that a workshop may change in its workshop.hcl.
parameter "cold_spare" {
  kind    = "quantity"
  unit    = "%"
  default = "5 %"
  range   = ["0 %", "30 %"]
  means   = "spare voltage on the coldest morning, as a share of the array's own"
}

# What designs are asked beside what they tell anyway. A bank answers with
#   declared "bookname" { vented = true }
attribute "vented" {
  of    = "banks"
  kind  = "yes_no"
  means = "the bank's enclosure vents to the outside, high up"
}
