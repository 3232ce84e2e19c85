# METADATA
# title: Drop to loads within Annex G
# description: Lamps show a drop that other loads bear. The figures are those of a private supply; where a public one feeds the loads set 3 and 5 %. Beyond 100 m a little more is allowed.
# custom:
#   grade: advise
#   each: loads
#   source: IEC 60364-5-52 525 and its Annex G (informative)
#   cites: [iec_60364_5_52]
#   remedy: use thicker or shorter cable, or a higher voltage
package codebooks.iec.branch_drop

check contains {"about": l.id, "is": r.path_drop, "at_most": fact.plus([allowed(l, r), far(r)])} if {
	some l in input.loads
	some r in l.cable_runs
}

check contains {"about": l.id, "does_not_apply": "it has no conductors of its own in the design"} if {
	some l in input.loads
	count(l.cable_runs) == 0
}

# What is enough for a lamp is enough for every load.
allowed(l, r) := fact.either(
	fact.at_least(fact.plus([input.params.lighting_drop_max, far(r)]), r.path_drop), input.params.lighting_drop_max,
	fact.either(l.declared.lighting, input.params.lighting_drop_max, input.params.other_drop_max),
)

# 0.005 % for each meter beyond 100 m, and 0.5 % at most.
far(r) := fact.either(
	fact.more_than(r.length, fact.number(100, "m")),
	fact.smallest([fact.number(0.5, "%"), fact.times([fact.number(0.005, "%"), fact.ratio(fact.minus(r.length, fact.number(100, "m")), fact.number(1, "m"))])]),
	fact.number(0, "%"),
)
