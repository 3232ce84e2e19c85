# METADATA
# title: Exactly one connection between neutral and ground
# description: Without one no fuse opens on a fault to a metal case; with two the ground conductors carry load current, and a residual-current device trips or is blind.
# custom:
#   grade: stop
#   each: grounding
#   source: common practice; IEC 60364-5-54
#   cites: [iec_60364_5_54]
#   remedy: "bond neutral and ground once: in the inverter, or at the first board"
package codebooks.limits.neutral_bond

check contains {"about": g.id, "is": g.neutral_bonds, "equals": fact.number(1, "")} if {
	g := input.grounding
	count(input.ac_outputs) > 0
}

check contains {"about": g.id, "does_not_apply": "no inverter, so no neutral"} if {
	g := input.grounding
	count(input.ac_outputs) == 0
}
