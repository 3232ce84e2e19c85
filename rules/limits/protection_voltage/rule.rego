# METADATA
# title: Fuses and breakers bear the highest voltage of their circuit
# description: Above its rated voltage a device may not put out the arc when it opens. On the PV side the coldest morning counts, on the bank's side the highest voltage that any charger, source or compensation brings.
# custom:
#   grade: stop
#   each: protections
#   waivable: false
#   source: maker's data sheet; IEC 62548-1
#   cites: [iec_62548_1]
#   remedy: use a fuse or breaker for a higher direct voltage, as it is wired
package codebooks.limits.protection_voltage

import data.codebooks.limits.shared

check contains {"about": p.id, "is": p.bus_voltage, "at_most": p.voltage} if {
	some p in input.protections
	not shared.on_ac(p)
}

check contains {"about": p.id, "does_not_apply": "on the AC side"} if {
	some p in input.protections
	shared.on_ac(p)
}
