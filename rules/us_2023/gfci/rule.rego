# METADATA
# title: Receptacles have ground-fault circuit interrupters where the code asks
# description: In a workshop, a garage, outdoors and near water a hand on a faulty tool is the way to ground. A fuse does not see that current; an interrupter opens at 5 mA. It works behind an inverter only where the neutral is joined to ground once.
# custom:
#   grade: fix
#   each: ac_outputs
#   source: NEC 2023 210.8
#   cites: [nec_2023_memory]
#   remedy: use receptacles or breakers with ground-fault circuit interrupters
package codebooks.us_2023.gfci

import data.codebooks.us_2023.shared

check contains {
	"about": o.id, "when": fact.all([shared.premises(input.site), fact.more_than(o.inverter.ac_voltage, fact.number(50, "V"))]), "otherwise": "not above 50 V, or not under this code",
	"is_true": o.declared.gfci, "because": "receptacles that the code names have no ground-fault circuit interrupter",
} if some o in input.ac_outputs
