# METADATA
# title: No ground connection on both sides of an inverter that is not isolated
# description: An inverter without isolation joins its AC side to the bank. Ground the neutral and a pole of the bank, and the bond carries load current, or shorts the inverter.
# custom:
#   grade: stop
#   each: ac_outputs
#   waivable: false
#   source: common practice
#   remedy: use an isolated inverter, or follow its maker's grounding scheme
#   equivalent:
#     - mutant: "1 / 1.01"
#       reason: "bonds are counted whole: at least 0.99 is at least 1"
#     - mutant: "1 / 1.01 #2"
#       reason: "bonds are counted whole: at least 0.99 is at least 1"
package codebooks.limits.inverter_isolation

check contains {
	"about": o.id, "when": fact.all([fact.at_least(g.neutral_bonds, 1), fact.at_least(g.dc_bonds, 1)]), "otherwise": "not both sides are grounded",
	"is_true": o.inverter.isolated, "because": "neutral and bank are both grounded, and the inverter is not isolated",
} if {
	some o in input.ac_outputs
	g := input.grounding
}
