# METADATA
# title: PV circuits on and in buildings can be shut down rapidly
# description: "Firefighters cut a roof open: within 30 s there may be 30 V beyond the array's boundary and 80 V inside it, or a listed hazard control system. An array on the ground whose conductors go into a building is held to it too. Structures for PV alone are excepted, and open detached ones whose circuit enters no building. An array that makes no more than those voltages meets the numbers by itself; the function is still owed."
# custom:
#   grade: stop
#   each: arrays
#   source: NEC 2023 690.12, 690.12(B)(1), 690.12(B)(2)
#   cites: [nec_2023, nec_2023_memory]
#   remedy: use module-level shutdown, or a listed hazard control system, with an initiator
package codebooks.us_2023.rapid_shutdown

import data.codebooks.us_2023.shared

check contains {
	"about": a.id, "which": "function", "when": due(a), "otherwise": "neither on nor in a building that needs it, or not under this code",
	"is_true": a.declared.rapid_shutdown, "because": "there is no rapid shutdown",
} if some a in input.arrays

check contains {
	"about": a.id, "which": "outside", "when": fact.all([due(a), fact.more_than(voltage(a), fact.number(30, "V"))]), "otherwise": "never above 30 V, or no rapid shutdown is due",
	"is": a.declared.shutdown_voltage_outside, "at_most": fact.number(30, "V"),
} if some a in input.arrays

check contains {
	"about": a.id, "which": "inside", "when": fact.all([due(a), fact.more_than(voltage(a), fact.number(80, "V")), fact.no(a.declared.hazard_control)]),
	"otherwise": "never above 80 V, a listed hazard control system, or no rapid shutdown is due",
	"is": a.declared.shutdown_voltage_inside, "at_most": fact.number(80, "V"),
} if some a in input.arrays

voltage(a) := shared.input_voltage(a.pv_input, input.strings)

due(a) := shared.shutdown_due(a, input.strings, input.site)
