# METADATA
# title: Poles are marked, and white only where one is solidly grounded
# description: White tells an electrician that a conductor is at ground. In an array that is grounded through a ground-fault device, or not at all, it is live.
# custom:
#   grade: fix
#   each: cable_runs
#   source: NEC 2023 690.31(B)(1)
#   cites: [nec_2023, nec_2023_memory]
#   remedy: mark the poles + and -, or by other colors than white, gray and green
package codebooks.us_2023.polarity_marking

import data.codebooks.us_2023.shared

check contains {
	"about": r.id, "when": shared.on_land(input.site), "otherwise": "not under this code",
	"is_true": fact.any([fact.one_of(r.declared.marking, ["color", "plus_minus"]), shared.solidly_grounded(input.grounding)]), "because": "white marks a conductor that is not solidly grounded",
} if {
	some r in input.cable_runs
	shared.on_pv(r)
}

check contains {"about": r.id, "does_not_apply": "not in a PV circuit"} if {
	some r in input.cable_runs
	not shared.on_pv(r)
}
