# METADATA
# title: Conductors fit the temperature of the terminals at their ends
# description: Terminals are tested with the heat of conductors at their column of Table 310.16, whatever insulation the conductor has and even in free air. Unmarked terminals count as 60 degC. The quarter for continuous duty counts here too.
# custom:
#   grade: stop
#   each: cable_runs
#   waivable: false
#   source: NEC 2023 110.14(C), 690.8(B)(1), Table 310.16
#   cites: [nec_2023]
#   remedy: use a larger conductor, or equipment whose terminals are marked 75 degC
#   equivalent:
#     - mutant: "without count(r.protections) > 0"
#       reason: "without a device there is no r.protections[0]: this definition has no value then, and the other holds"
package codebooks.us_2023.conductor_terminals

import data.codebooks.us_2023.shared

check contains {
	"about": r.id, "when": shared.covered(r, input.site), "otherwise": "not under this code",
	"is": borne(r), "at_most": carried(r),
} if some r in input.cable_runs

carried(r) := fact.times([shared.at_terminals(r), r.per_pole])

borne(r) := fact.either(fact.at_least(carried(r), shared.continuous_current(r)), shared.continuous_current(r),
	fact.either(r.protections[0].continuous_rated, shared.maximum_current(r), shared.continuous_current(r))) if count(r.protections) > 0

borne(r) := shared.continuous_current(r) if count(r.protections) == 0
