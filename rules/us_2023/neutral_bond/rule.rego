# METADATA
# title: The AC neutral is joined to ground once
# description: Without a connection a fault to a metal case trips nothing; with two, current flows through metal that people touch.
# custom:
#   grade: fix
#   each: grounding
#   source: NEC 2023 250.30
#   cites: [nec_2023_memory]
#   remedy: leave one connection between neutral and ground, at the inverter or at the panel
package codebooks.us_2023.neutral_bond

import data.codebooks.us_2023.shared

check contains {
	"about": input.grounding.id, "when": shared.premises(input.site), "otherwise": "not under this code",
	"is": input.grounding.neutral_bonds, "equals": fact.number(1, ""),
} if count(input.ac_outputs) > 0

check contains {"about": input.grounding.id, "does_not_apply": "there is no AC output"} if count(input.ac_outputs) == 0
