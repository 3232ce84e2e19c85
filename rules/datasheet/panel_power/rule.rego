# METADATA
# title: Rated power agrees with voltage times current at maximum power
# description: Vmp times Imp is the rated power, but for rounding. Where it is not, one of the three was copied from another column.
# custom:
#   grade: fix
#   each: panels
#   source: EN 50380 (data sheets of panels); how far rounding may go is common practice
#   cites: [en_50380, villalva]
#   remedy: compare the part with its data sheet, and correct the value that was copied wrongly
package codebooks.datasheet.panel_power

check contains {
	"about": p.id, "is": fact.times([p.vmp, p.imp]),
	"between": [
		fact.times([p.pmax, fact.minus(1, input.params.power_agreement)]),
		fact.times([p.pmax, fact.plus([1, input.params.power_agreement])]),
	],
} if some p in input.panels
