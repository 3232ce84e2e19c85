# METADATA
# title: Storage stays within the voltage of its building
# description: In one- and two-family dwellings a bank stays at 100 V between conductors and to ground, elsewhere at 600 V; where no live part can be reached in maintenance a dwelling's may be higher, which is not judged here.
# custom:
#   grade: stop
#   each: banks
#   source: NEC 2023 706.20(B)
#   cites: [nec_2023, nec_2023_memory]
#   remedy: put fewer batteries in series
package codebooks.us_2023.storage_voltage

import data.codebooks.us_2023.shared

check contains {
	"about": b.id, "when": shared.premises(input.site), "otherwise": "not under this code",
	"is": b.voltage_max,
	"at_most": fact.either(fact.all([fact.more_than(b.voltage_max, fact.number(100, "V")), fact.no(shared.dwelling(input.site))]), fact.number(600, "V"), fact.number(100, "V")),
} if some b in input.banks
