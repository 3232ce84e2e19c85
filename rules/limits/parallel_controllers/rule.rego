# METADATA
# title: No more controllers of a kind on one bank than the maker allows
# description: Controllers in parallel read each other's voltage. How many still work together, their maker says.
# custom:
#   grade: fix
#   each: chargers
#   source: maker's data sheet
#   remedy: use fewer and larger controllers
#   equivalent:
#     - mutant: "1 x 1.01"
#       reason: "controllers are counted whole: more than 1.01 is more than 1"
package codebooks.limits.parallel_controllers

check contains {"about": c.id, "is": fact.number(count(alike(c)), ""), "at_most": c.controller.parallel_max} if {
	some c in input.chargers
	count(alike(c)) > 1
}

check contains {"about": c.id, "does_not_apply": "the only one of its kind on the bank"} if {
	some c in input.chargers
	count(alike(c)) == 1
}

# The chargers of the same model on the same bank, this one included.
alike(c) := [o | some o in input.chargers; o.bank.id == c.bank.id; o.controller.id == c.controller.id]
