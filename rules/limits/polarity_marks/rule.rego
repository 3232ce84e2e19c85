# METADATA
# title: A polarized breaker is wired by its marks
# description: "Where current flows one way alone a polarized breaker may stand, if the source is at the terminal that its marks name. Wired the other way its magnet drives the arc into the mechanism, and it burns when it is opened under load for the first time. The marks name the source's side, which is not always the side at the top."
# custom:
#   grade: fix
#   each: protections
#   source: common practice; maker's instructions
#   remedy: draw and wire it by its marks and say so with wired_by_marks, or use a breaker that is not polarized
package codebooks.limits.polarity_marks

import data.codebooks.limits.shared

check contains {
	"about": p.id, "when": fact.all([fact.one_of(p.kind, ["breaker"]), p.polarized, fact.no(p.two_way)]), "otherwise": "a fuse, not polarized, or current can reverse here: limits.polarized",
	"is_true": p.declared.wired_by_marks, "because": "the breaker breaks current in one direction alone, and is not wired by its marks",
} if {
	some p in input.protections
	not apart(p)
}

check contains {"about": p.id, "does_not_apply": "on the AC side, or where current can always reverse: limits.polarized"} if {
	some p in input.protections
	apart(p)
}

apart(p) if shared.on_ac(p)

# Between bank and controller or another source, and in the bank itself.
apart(p) if count(array.flatten([p.chargers, p.banks, p.charge_sources])) > 0
