# METADATA
# title: First device within reach of the source
# description: Between the source and its first fuse nothing protects the conductor. Bare it may be a hand long; in a sheath or conduit all the way the standards allow more, ISO without a figure.
# custom:
#   grade: fix
#   each: protections
#   source: 33 CFR 183.455 (178 mm, 1.016 m in a sheath) and 33 CFR 183.460 (1.829 m at the battery, from memory), ABYC E-11 11.10.1 (175 mm; sheathed 1.02 m, 1.83 m at the battery), ISO 13297 12.1 (200 mm, from memory)
#   cites: [cfr_183, cfr_183_memory, abyc_e11, iso_13297_memory]
#   remedy: move the fuse to the battery's post or the bus, or sheath the conductor all the way
package codebooks.marine.first_device

import data.codebooks.marine.shared

check contains {
	"about": p.id,
	"when": fact.all([shared.boat(input.site), fact.any([fact.at_least(bare, p.distance), fact.no(fact.all([shared.by("iso"), sheathed(p)]))])]),
	"otherwise": "not a boat, or sheathed all the way, for which ISO 13297 names no length",
	"is": p.distance,
	"at_most": fact.either(fact.at_least(bare, p.distance), bare, fact.either(sheathed(p), covered(p), bare)),
} if {
	some p in input.protections
	shared.bank_feeds(p)
	bare := fact.either(
		shared.by("abyc"), fact.number(175, "mm"),
		fact.either(shared.by("cfr"), fact.number(7, "in"), fact.number(200, "mm")),
	)
}

check contains {"about": p.id, "does_not_apply": "no bank feeds a fault here"} if {
	some p in input.protections
	not shared.bank_feeds(p)
}

sheathed(p) := r.sheathed if some r in p.cable_runs

# No run stands beside the devices between batteries: they count as bare.
sheathed(p) := fact.all([false]) if count(p.cable_runs) == 0

# From the battery's post; from a bus less.
covered(p) := fact.number(72, "in") if count(p.banks) > 0

covered(p) := fact.number(40, "in") if count(p.banks) == 0
