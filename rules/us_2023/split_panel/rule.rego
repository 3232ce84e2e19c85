# METADATA
# title: A 120 V source feeds no multiwire circuits of a 120/240 V panel
# description: "Fed from one 120 V source both hot legs are in step: their currents add in a shared neutral, which then burns."
# custom:
#   grade: stop
#   each: ac_outputs
#   source: NEC 2023 710.15(C)
#   cites: [nec_2023]
#   remedy: take the multiwire circuits and 240 V outlets off that panel, or use a 120/240 V source
package codebooks.us_2023.split_panel

import data.codebooks.us_2023.shared

check contains {
	"about": o.id, "when": fact.all([shared.premises(input.site), o.declared.split_panel]), "otherwise": "it feeds no panel made for 120/240 V, or not under this code",
	"is_true": fact.no(o.declared.multiwire), "because": "multiwire circuits or 240 V outlets hang on a panel that one 120 V source feeds",
} if some o in input.ac_outputs
