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
	"about": r.id, "which": "free air", "when": fact.all([shared.on_land(input.site), fact.one_of(r.method, ["free_air"])]), "otherwise": "laid in another way, or not under this code",
	"is_true": fact.one_of(r.declared.raceway, ["none"]), "because": "the conductors are written as in free air, and as enclosed",
} if {
	some r in input.cable_runs
	shared.on_pv(r)
}

check contains {
	"about": r.id, "which": "conduit", "when": fact.all([shared.on_land(input.site), fact.one_of(r.method, ["conduit"])]), "otherwise": "laid in another way, or not under this code",
	"is_true": fact.one_of(r.declared.raceway, ["metal", "nonmetallic"]), "because": "the conductors are written as in a conduit, and no conduit encloses them",
} if {
	some r in input.cable_runs
	shared.on_pv(r)
}

check contains {
	"about": r.id, "which": "direct buried", "when": fact.all([shared.on_land(input.site), fact.one_of(r.method, ["direct_buried"])]), "otherwise": "laid in another way, or not under this code",
	"is_true": fact.one_of(r.declared.raceway, ["none", "mc_cable"]), "because": "the conductors are written as directly in the earth, and as in a raceway",
} if {
	some r in input.cable_runs
	shared.on_pv(r)
}

check contains {"about": r.id, "does_not_apply": "not in a PV circuit"} if {
	some r in input.cable_runs
	not shared.on_pv(r)
}
