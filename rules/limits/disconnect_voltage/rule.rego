# METADATA
# title: Switches bear the highest voltage of their circuit
# description: Above its rated voltage a device may not put out the arc when it opens. On the PV side the coldest morning counts, on the bank's side the highest voltage that any charger, source or compensation brings.
# custom:
#   grade: stop
#   each: disconnects
#   waivable: false
#   source: maker's data sheet; IEC 62548-1
#   cites: [iec_62548_1]
#   remedy: use a switch for a higher direct voltage, as it is wired
package codebooks.limits.disconnect_voltage

import data.codebooks.limits.shared

check contains {"about": d.id, "is": d.bus_voltage, "at_most": d.voltage} if {
	some d in input.disconnects
	not shared.on_ac(d)
}

check contains {"about": d.id, "does_not_apply": "on the AC side"} if {
	some d in input.disconnects
	shared.on_ac(d)
}
