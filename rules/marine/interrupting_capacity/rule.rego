# METADATA
# title: Main and branch devices interrupt what the bank gives
# description: For a lead bank of usual size a table by cold-cranking current counts. A larger bank, and every lithium bank, is judged by its maker's short-circuit current; above 10 kA the device is one of 20 kA at 125 V of direct current.
# custom:
#   grade: fix
#   each: protections
#   source: ABYC E-11 11.10.1, interrupting capacity (July 2025; the table from an older edition)
#   cites: [abyc_e11]
#   remedy: use a fuse with more interrupting capacity, such as class T
#   equivalent:
#     - mutant: "2200 / 1.01"
#       reason: "2178 A lies in the last row as well, and what is more counts as its end"
package codebooks.marine.interrupting_capacity

import data.codebooks.marine.shared

check contains {
	"about": p.id, "which": "capacity", "when": shared.boat(input.site), "otherwise": "not a boat",
	"is": p.interrupts,
	"at_least": fact.either(by_maker(b), fact.either(strong(b), fact.number(20, "kA"), b.short_circuit_current), by_table(p, b, "interrupting_main", 5000)),
} if {
	some p in input.protections
	some b in p.banks
	not shared.in_each(p)
}

check contains {
	"about": p.id, "which": "voltage", "when": fact.all([shared.boat(input.site), by_maker(b), strong(b)]), "otherwise": "not a boat, or no bank that gives more than 10 kA",
	"is": p.voltage, "at_least": fact.number(125, "V"),
} if {
	some p in input.protections
	some b in p.banks
	not shared.in_each(p)
}

check contains {
	"about": p.id, "which": "branch", "when": fact.all([shared.boat(input.site), fact.no(by_maker(b))]), "otherwise": "not a boat, or a bank whose main device alone the standard speaks of",
	"is": p.interrupts, "at_least": by_table(p, b, "interrupting_branch", 2500),
} if {
	some p in input.protections
	some b in branch_of(p)
}

check contains {"about": p.id, "does_not_apply": "neither the main nor a branch of a bank"} if {
	some p in input.protections
	count(branch_of(p)) == 0
	not main(p)
}

main(p) if {
	count(p.banks) > 0
	not shared.in_each(p)
}

by_maker(b) := fact.any([shared.lithium(b.battery), fact.more_than(b.capacity, fact.number(500, "Ah"))])

strong(b) := fact.more_than(b.short_circuit_current, fact.number(10, "kA"))

# What is enough by the last row is so by every row.
by_table(p, b, table, last) := fact.either(
	fact.at_least(p.interrupts, fact.number(last, "A")),
	fact.number(last, "A"),
	fact.lookup(table, [cranking(b)]),
)

# The last row has no upper end.
cranking(b) := fact.smallest([b.declared.cold_cranking, fact.number(2200, "A")])

branch_of(p) := array.concat(
	array.concat([c.bank | some c in p.chargers], [o.bank | some o in p.ac_outputs]),
	array.flatten([[e.bank | some e in p.charge_sources], [s.bank | some s in p.supplies], [b | some l in p.loads; some b in l.banks]]),
)
