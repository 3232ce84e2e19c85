# METADATA
# title: Conductors are judged in air as hot as where they lie
# description: Every correction for heat goes by the hottest air that the design writes beside the run. Outside that is the weather's, at the charger and at the bank the air that is written there. A cooler figure lets a conductor pass that is too small for the summer.
# custom:
#   grade: fix
#   each: cable_runs
#   source: NEC 2023 310.15(B)(1), 690.31(A)
#   cites: [nec_2023, nec_2023_memory]
#   remedy: write the hottest air around the run as its ambient, and see what its size comes to
package codebooks.us_2023.ambient

import data.codebooks.us_2023.shared

check contains {
	"about": r.id, "which": "outside", "when": fact.all([shared.covered(r, input.site), outside(r), fact.no(fact.one_of(r.method, ["buried", "direct_buried"]))]),
	"otherwise": "inside, below ground, or not under this code",
	"is": r.ambient, "at_least": fact.minus(input.site.hottest, input.params.ambient_below_hottest),
} if some r in input.cable_runs

# Where a charger and a bank stand the design says how hot it gets.
check contains {
	"about": r.id, "which": "beside its equipment", "when": shared.premises(input.site), "otherwise": "not under this code",
	"is": r.ambient, "at_least": air,
} if {
	some r in input.cable_runs
	some air in array.concat([c.hottest | some c in r.chargers], [b.hottest | some b in r.banks])
}

# A run that leaves a roof and goes inside is outside too.
outside(r) := fact.any([fact.no(r.indoors), r.declared.on_roof]) if shared.on_pv(r)

outside(r) := fact.no(r.indoors) if not shared.on_pv(r)
