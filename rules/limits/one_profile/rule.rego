# METADATA
# title: Chargers on one bank have one profile
# description: "Chargers with unlike voltages work against each other: one holds the bank at its absorption while another believes it full, and neither does what was planned."
# custom:
#   grade: fix
#   each: banks
#   source: common practice
#   remedy: program the same voltages into all of them, or let them talk to each other
#   equivalent:
#     - mutant: "1 x 1.01"
#       reason: "chargers are counted whole: more than 1.01 is more than 1"
#     - mutant: "1 x 1.01 #2"
#       reason: "chargers are counted whole: more than 1.01 is more than 1"
#     - mutant: "1 x 1.01 #3"
#       reason: "chargers are counted whole: more than 1.01 is more than 1"
#     - mutant: "1 x 1.01 #4"
#       reason: "chargers are counted whole: more than 1.01 is more than 1"
#     - mutant: "2 / 1.01"
#       reason: "chargers are counted whole: fewer than 1.98 are fewer than 2"
package codebooks.limits.one_profile

check contains {"about": b.id, "which": "absorption", "all_equal": [c.settings.absorption | some c in on(b)], "because": "absorption differs from charger to charger"} if {
	some b in input.banks
	count(on(b)) > 1
}

check contains {"about": b.id, "which": "float", "all_equal": [c.settings.float | some c in on(b)], "because": "float differs from charger to charger"} if {
	some b in input.banks
	count(on(b)) > 1
}

check contains {"about": b.id, "which": "equalizing", "all_equal": [c.settings.equalize | some c in on(b)], "because": "equalizing is on in some chargers and off in others"} if {
	some b in input.banks
	count(on(b)) > 1
}

check contains {"about": b.id, "which": "compensation", "all_equal": [c.settings.temperature_compensation | some c in on(b)], "because": "temperature compensation differs from charger to charger"} if {
	some b in input.banks
	count(on(b)) > 1
}

check contains {"about": b.id, "does_not_apply": "fewer than two chargers"} if {
	some b in input.banks
	count(on(b)) < 2
}

# The chargers on a bank.
on(b) := [c | some c in input.chargers; c.bank.id == b.id]
