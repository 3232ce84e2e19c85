# METADATA
# title: Conductors carry their circuit for hours, before corrections
# description: "1.25 for PV circuits, 1.25 more for continuous duty: 1.5625 x Isc, or 1.25 x the equipment's current. The ampacity of the table, uncorrected, must be that much. Where the device beside it is listed to carry its rating for ever, the quarter for continuous duty falls away. A maker's ampacity does not stand in for the code's table."
# custom:
#   grade: stop
#   each: cable_runs
#   waivable: false
#   source: NEC 2023 690.8(A)(1), 690.8(B)(1), 210.19, 215.2, 706.30(B), 706.30(A), Tables 310.16 and 310.17
#   cites: [nec_2023, nec_2023_memory]
#   remedy: use a larger conductor
#   equivalent:
#     - mutant: "without count(r.protections) > 0"
#       reason: "without a device there is no r.protections[0]: this definition has no value then, and the other holds"
package codebooks.us_2023.conductor_continuous

import data.codebooks.us_2023.shared

check contains {
	"about": r.id, "when": shared.covered(r, input.site), "otherwise": "not under this code",
	"is": borne(r), "at_most": carried(r),
} if some r in input.cable_runs

carried(r) := fact.times([shared.uncorrected(r), r.per_pole])

# Only where the quarter decides is it asked whether the device is listed for 100 %.
borne(r) := fact.either(fact.at_least(carried(r), shared.continuous_current(r)), shared.continuous_current(r),
	fact.either(r.protections[0].continuous_rated, shared.maximum_current(r), shared.continuous_current(r))) if count(r.protections) > 0

borne(r) := shared.continuous_current(r) if count(r.protections) == 0
