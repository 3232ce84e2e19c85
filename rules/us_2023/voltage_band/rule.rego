# METADATA
# title: PV voltage within the band of its building
# description: On and in one- and two-family dwellings PV circuits stay at 600 V, elsewhere at 1000 V. What may go higher off buildings is not judged here.
# custom:
#   grade: stop
#   each: pv_inputs
#   waivable: false
#   source: NEC 2023 690.7
#   cites: [nec_2023]
#   remedy: take panels out of series
package codebooks.us_2023.voltage_band

import data.codebooks.us_2023.shared

check contains {
	"about": i.id, "when": shared.on_land(input.site), "otherwise": "not under this code",
	"is": voltage(i),
	"at_most": fact.either(fact.all([fact.more_than(voltage(i), fact.number(600, "V")), fact.no(shared.dwelling(input.site))]), fact.number(1000, "V"), fact.number(600, "V")),
} if some i in input.pv_inputs

voltage(i) := shared.input_voltage(i, input.strings)
