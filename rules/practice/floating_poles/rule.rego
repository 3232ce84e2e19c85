# METADATA
# title: Where nothing is grounded, devices and switches open both poles
# description: On a floating system a first fault to ground shows nowhere. With a second one current passes the pole that no device stands in, and a switch of one pole leaves the other live.
# custom:
#   grade: advise
#   each: grounding
#   source: common practice; codes ask for it, each in its own way
#   remedy: use devices and switches of two poles, ground one pole at one place, or fit an insulation monitor and say so in a waiver
#   equivalent:
#     - mutant: "2 / 1.01"
#       reason: "poles are counted whole: at least 1.98 is at least 2"
#     - mutant: "2 / 1.01 #2"
#       reason: "poles are counted whole: at least 1.98 is at least 2"
package codebooks.practice.floating_poles

check contains {
	"about": input.grounding.id, "which": p.id, "when": fact.one_of(input.grounding.dc, ["floating"]), "otherwise": "one pole is grounded",
	"is": p.poles, "at_least": fact.number(2, ""),
} if {
	some p in input.protections
	due(p)
}

check contains {
	"about": input.grounding.id, "which": d.id, "when": fact.one_of(input.grounding.dc, ["floating"]), "otherwise": "one pole is grounded",
	"is": d.poles, "at_least": fact.number(2, ""),
} if {
	some d in input.disconnects
	not on_ac(d)
}

check contains {"about": input.grounding.id, "does_not_apply": "no such device and no switch for direct current"} if {
	count([p | some p in input.protections; due(p)]) == 0
	count([d | some d in input.disconnects; not on_ac(d)]) == 0
}

# A device among the panels is a code's affair: one in one pole may do there.
due(p) if {
	count(array.concat(p.strings, p.arrays)) == 0
	not on_ac(p)
}

on_ac(x) if {
	some l in x.loads
	count(l.ac_outputs) > 0
}
