# METADATA
# title: What encloses a PV conductor agrees with how it is laid
# description: A single conductor in free air carries half as much again as the same one in a raceway, and the tables go by the method. A run that is written as free air and as a raceway too is judged by the wrong one of them.
# custom:
#   grade: stop
#   each: cable_runs
#   source: NEC 2023 310.16, 310.17, 690.8(B)(2)
#   cites: [nec_2023, nec_2023_memory]
#   remedy: write the method conduit where the conductors run in a raceway, surface where they run in metal-clad cable, and free_air where nothing encloses them
package codebooks.us_2023.method_agrees

import data.codebooks.us_2023.shared

check contains {
	"about": r.id, "when": shared.on_land(input.site), "otherwise": "not under this code",
	"is_true": fact.all([
		fact.any([fact.no(fact.one_of(r.method, ["free_air"])), fact.one_of(r.declared.raceway, ["none"])]),
		fact.any([fact.no(fact.one_of(r.method, ["conduit"])), fact.one_of(r.declared.raceway, ["metal", "nonmetallic"])]),
		fact.any([fact.no(fact.one_of(r.method, ["direct_buried"])), fact.one_of(r.declared.raceway, ["none", "mc_cable"])]),
	]),
	"because": "how the conductors are laid and what encloses them contradict each other",
} if {
	some r in input.cable_runs
	shared.on_pv(r)
}

check contains {"about": r.id, "does_not_apply": "not in a PV circuit"} if {
	some r in input.cable_runs
	not shared.on_pv(r)
}
