# METADATA
# title: Coldest-morning voltage within the controller's and the panels' limits
# description: Panels make more voltage the colder they are. The code takes the makers' coefficients at the lowest expected temperature, or its own table for crystalline silicon where a data sheet gives none; below -40 degC the table ends. A method stamped by an engineer is not judged here.
# custom:
#   grade: stop
#   each: strings
#   waivable: false
#   source: "NEC 2023 690.7, 690.7(A), Table 690.7(A); ratings of listed equipment: 110.3(B)"
#   cites: [nec_2023, nec_2023_memory]
#   remedy: take panels out of series, or choose equipment for a higher voltage
package codebooks.us_2023.pv_voltage

import data.codebooks.us_2023.shared

check contains {
	"about": s.id, "which": "by its coefficients", "when": fact.all([shared.on_land(input.site), fact.no(shared.by_table(s))]),
	"otherwise": "by Table 690.7(A), or not under this code",
	"is": s.voc_cold, "at_most": limit(s),
} if some s in input.strings

check contains {
	"about": s.id, "which": "by table", "when": fact.all([shared.on_land(input.site), shared.by_table(s)]),
	"otherwise": "by the panels' coefficients, or not under this code",
	"is": shared.table_voltage(s), "at_most": limit(s),
} if some s in input.strings

limit(s) := fact.smallest([s.pv_input.controller.pv_voltage_max, s.system_voltage_max])
