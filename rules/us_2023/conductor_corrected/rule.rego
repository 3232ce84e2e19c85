# METADATA
# title: Conductors carry their maximum current under the conditions that they lie in
# description: "Heat around it and other conductors beside it take from a conductor's ampacity. What is left, from the column of its insulation, must be the circuit's maximum current: 1.25 x Isc of a PV circuit, else the equipment's current. A conduit or cable in the sun less than 19 mm over a roof counts as 33 K hotter."
# custom:
#   grade: stop
#   each: cable_runs
#   waivable: false
#   source: NEC 2023 690.8(A)(1), 690.8(B)(2), 690.31(A), 310.15(B)(1), 310.15(B)(2), 310.15(C)(1), Tables 310.16 and 310.17
#   cites: [nec_2023, nec_2023_memory]
#   remedy: use a larger conductor or hotter insulation, raise the conduit, or part the bundle
#   answers:
#     - rule: limits.conductor_carries
#       with: [conductor_protected]
#     - rule: datasheet.conductor_ampacity
package codebooks.us_2023.conductor_corrected

import data.codebooks.us_2023.shared

check contains {
	"about": r.id, "when": shared.covered(r, input.site), "otherwise": "not under this code",
	"is": shared.maximum_current(r), "at_most": shared.corrected(r),
	"also": [shared.uncorrected(r)],
} if some r in input.cable_runs
