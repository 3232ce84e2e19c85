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
	"about": input.grounding.id, "which": "devices", "when": fact.one_of(input.grounding.dc, ["floating"]), "otherwise": "one pole is grounded",
	"is_true": fact.all([fact.at_least(p.poles, fact.number(2, "")) | some p in devices(input.protections)]), "because": "a fuse or breaker opens one pole alone",
} if count(devices(input.protections)) > 0

check contains {
	"about": input.grounding.id, "which": "switches", "when": fact.one_of(input.grounding.dc, ["floating"]), "otherwise": "one pole is grounded",
	"is_true": fact.all([fact.at_least(d.poles, fact.number(2, "")) | some d in switches(input.disconnects)]), "because": "a switch opens one pole alone",
} if count(switches(input.disconnects)) > 0

check contains {"about": input.grounding.id, "does_not_apply": "no such device and no switch for direct current"} if {
	count(array.concat(devices(input.protections), switches(input.disconnects))) == 0
}

devices(protections) := [p | some p in protections; due(p)]

switches(disconnects) := [d | some d in disconnects; not on_ac(d)]

# A device among the panels is a code's affair: one in one pole may do there.
due(p) if {
	count(array.concat(p.strings, p.arrays)) == 0
	not on_ac(p)
}

on_ac(x) if {
	some l in x.loads
	count(l.ac_outputs) > 0
}
