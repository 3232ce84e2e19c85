# METADATA
# title: Conductors carry their current by the tables
# description: A conductor that carries more than it bears heats its insulation until that fails. How it is laid, the air around it and what lies beside it decide what it bears.
# custom:
#   grade: stop
#   each: cable_runs
#   source: IEC 60364-5-52 523, methods B1, B2, C and E with their corrections (C for XLPE from memory, within 2 % of the formula of the annex); on the PV side ISC MAX of IEC 62548-1 6.3
#   cites: [iec_60364_5_52, iec_60364_5_52_memory, iec_62548_1]
#   remedy: use a larger conductor, lay it apart from others or out of the heat; beyond the tables give the ampacity from its data sheet
#   answers:
#     - rule: limits.conductor_carries
#       with: [pv_fault_current]
#     - rule: datasheet.conductor_ampacity
package codebooks.iec.conductor_current

import data.codebooks.iec.shared

check contains {
	"about": r.id, "when": fact.no(shared.from_memory(r)), "otherwise": "its table is from memory, and judged by itself",
	"is": shared.design_current(r), "at_most": shared.capacity(r),
} if some r in input.cable_runs
