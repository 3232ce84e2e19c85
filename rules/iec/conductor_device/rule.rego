# METADATA
# title: Devices fit between current and conductor
# description: "The device carries what the circuit needs, and lets the conductor carry no more than it bears: In between Ib and Iz. A fuse of class gG melts only at 1.6 In (below 16 A at 1.9, up to 4 A at 2.1), which must stay within 1.45 Iz."
# custom:
#   grade: fix
#   each: protections
#   source: IEC 60364-4-43 433.1 (from memory; conventional currents of gG fuses by IEC 60269-1 and -2, from memory); Iz by IEC 60364-5-52 523
#   cites: [iec_60364_4_43, iec_60364_5_52]
#   remedy: use a larger conductor or another rating
#   answers:
#     - rule: limits.fuse_protects_conductor
package codebooks.iec.conductor_device

import data.codebooks.iec.shared

check contains {"about": p.id, "which": "Ib", "is": shared.design_current(r), "at_most": p.rating} if {
	some p in input.protections
	not shared.in_each(p)
	some r in p.cable_runs
}

check contains {"about": p.id, "which": "In", "is": p.rating, "at_most": shared.capacity(r)} if {
	some p in input.protections
	not shared.in_each(p)
	some r in p.cable_runs
}

check contains {
	"about": p.id, "which": "I2",
	"when": fact.all([fact.one_of(p.kind, ["fuse"]), fact.one_of(p.class, ["gG"])]), "otherwise": "its conventional current lies within 1.45 In, or its class is of another standard",
	"is": fact.times([conventional(p), p.rating]), "at_most": fact.times([1.45, shared.capacity(r)]),
} if {
	some p in input.protections
	not shared.in_each(p)
	some r in p.cable_runs
}

check contains {"about": p.id, "does_not_apply": "no conductor of the design lies behind it"} if {
	some p in input.protections
	not has_run(p)
}

has_run(p) if {
	not shared.in_each(p)
	count(p.cable_runs) > 0
}

# The multiple of In at which a fuse of class gG melts within its conventional time.
conventional(p) := fact.either(
	fact.at_least(p.rating, fact.number(16, "A")), fact.number(1.6, ""),
	fact.either(fact.more_than(p.rating, fact.number(4, "A")), fact.number(1.9, ""), fact.number(2.1, "")),
)
