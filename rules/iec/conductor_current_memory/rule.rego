# METADATA
# title: Buried, walled-in and photovoltaic cables carry their current
# description: As for other conductors; but the tables for these are from memory, so a close result wants a look at the standard's own.
# custom:
#   grade: fix
#   each: cable_runs
#   source: IEC 60364-5-52 523, methods A1, A2, D1 and D2, and EN 50618 Annex A, Tables A.3 and A.4 (all from memory)
#   cites: [iec_60364_5_52_memory, en_50618]
#   remedy: use a larger conductor; beyond the tables give the ampacity from its data sheet
package codebooks.iec.conductor_current_memory

import data.codebooks.iec.shared

check contains {
	"about": r.id, "when": shared.from_memory(r), "otherwise": "judged by tables that were read",
	"is": shared.design_current(r), "at_most": shared.capacity(r),
} if some r in input.cable_runs
