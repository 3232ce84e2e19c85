# METADATA
# title: No polarized breaker where current can reverse
# description: A polarized breaker blows its arc out with a magnet, in one direction. Current the other way drives the arc into the mechanism, which burns. Between controller and bank, at the bank, and among strings current can flow either way.
# custom:
#   grade: stop
#   each: protections
#   waivable: false
#   source: common practice
#   remedy: use breakers that are not polarized, or fuses
package codebooks.limits.polarized

check contains {
	"about": p.id, "when": fact.all([fact.one_of(p.kind, ["breaker"]), fact.any([fact.no(p.polarized), p.two_way])]), "otherwise": "a fuse, or current flows one way here",
	"is_true": fact.no(p.polarized), "because": "current can reverse here, and the breaker is polarized",
} if {
	some p in input.protections
	count(array.flatten([p.ac_outputs, p.loads, p.supplies])) == 0
}

# To a load or a converter current flows one way alone, whatever the device is; a
# breaker for alternating current has no word on it in its sheet.
check contains {"about": p.id, "does_not_apply": "a fuse, or current flows one way here"} if {
	some p in input.protections
	count(array.concat(p.loads, p.supplies)) > 0
}

# At an inverter current reverses where it can charge. A data sheet's silence on
# that is no answer here; a breaker that is not polarized needs none.
check contains {
	"about": p.id, "when": fact.all([fact.one_of(p.kind, ["breaker"]), fact.any([fact.no(p.polarized), fact.more_than(o.inverter.charge_current_max, fact.number(0, "A"))])]),
	"otherwise": "a fuse, or an inverter that does not charge",
	"is_true": fact.no(p.polarized), "because": "the inverter can charge through it, and the breaker is polarized",
} if {
	some p in input.protections
	some o in p.ac_outputs
}
