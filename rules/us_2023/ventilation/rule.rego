# METADATA
# title: Banks are ventilated as their technology needs
# description: Lead batteries give off hydrogen, others need what their makers ask for.
# custom:
#   grade: fix
#   each: banks
#   source: NEC 2023 706.20(A), 480.10
#   cites: [nec_2023, nec_2023_memory]
#   remedy: vent the bank's room or enclosure to the outside
package codebooks.us_2023.ventilation

import data.codebooks.us_2023.shared

check contains {
	"about": b.id, "when": shared.premises(input.site), "otherwise": "not under this code",
	"is_true": b.declared.ventilated, "because": "the bank is not ventilated as its technology needs",
} if some b in input.banks
