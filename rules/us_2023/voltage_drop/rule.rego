# METADATA
# title: Voltage drop along a path as the code's notes inform
# description: The code sets no limit. Its informational notes speak of 3 % in a branch or a feeder and 5 % in both together.
# custom:
#   grade: advise
#   each: cable_runs
#   source: NEC 2023 210.19, 215.2 (informational notes)
#   cites: [nec_2023, nec_2023_memory]
#   remedy: use larger or shorter conductors, or a higher voltage
package codebooks.us_2023.voltage_drop

import data.codebooks.us_2023.shared

check contains {
	"about": r.id, "when": shared.covered(r, input.site), "otherwise": "not under this code",
	"is": r.path_drop, "at_most": input.params.voltage_drop_max,
} if some r in input.cable_runs
