# METADATA
# title: PV circuits above 30 V or 8 A have ground-fault protection
# description: A fault to ground that nobody notices becomes an arc with the next one. One pole joined to ground without such a device is solid grounding, which only up to two strings may have that neither stand on a building nor go into one.
# custom:
#   grade: stop
#   each: grounding
#   source: NEC 2023 690.41(A), 690.41(B), 690.42
#   cites: [nec_2023, nec_2023_memory]
#   remedy: use a controller with ground-fault detection and interruption, or a separate device
#   equivalent:
#     - mutant: "2 x 1.01"
#       reason: "strings are counted whole: at most 2.02 is at most 2"
package codebooks.us_2023.ground_fault

import data.codebooks.us_2023.shared

check contains {
	"about": input.grounding.id, "when": fact.all([shared.on_land(input.site), fact.any(array.concat([false], [shared.above_30_v_or_8_a(i, input.strings) | some i in input.pv_inputs]))]),
	"otherwise": "no PV circuit above 30 V or 8 A, or not under this code",
	"is_true": fact.any([input.grounding.ground_fault_protection, excepted]), "because": "no ground-fault protection, and no exception for a small, solidly grounded array off buildings",
} if {
	excepted := fact.all(array.concat(
		[shared.solidly_grounded(input.grounding)],
		array.concat([fact.at_least(2, i.parallel_strings) | some i in input.pv_inputs], [fact.all([fact.no(shared.on_building(a, input.site)), fact.no(shared.enters(a, input.strings, input.site))]) | some a in input.arrays]),
	))
}
