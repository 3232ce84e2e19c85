# METADATA
# title: One connection between the DC system and ground, or none where it floats
# description: With two connections load current flows through the ground conductors, and a ground-fault detector sees nothing or always trips.
# custom:
#   grade: stop
#   each: grounding
#   source: common practice; IEC 60364-7-712
#   cites: [iec_60364_7_712]
#   remedy: leave one connection, at one place
package codebooks.limits.dc_bond

check contains {
	"about": g.id, "is": g.dc_bonds,
	"equals": fact.either(fact.one_of(g.dc, ["floating"]), fact.number(0, ""), fact.number(1, "")),
} if g := input.grounding
