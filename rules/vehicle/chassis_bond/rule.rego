# METADATA
# title: Battery bonded to the chassis thickly enough
# description: A fault to the chassis returns through the bond. It must bear what the battery's own lead bears.
# custom:
#   grade: fix
#   each: banks
#   source: "NEC 552.10(C) (letter from memory): 8 AWG of copper, and no less than the battery's lead where that is larger"
#   cites: [nec_552]
#   remedy: bond with a conductor as thick as the battery's lead
package codebooks.vehicle.chassis_bond

import data.codebooks.vehicle.shared

check contains {
	"about": b.id, "when": shared.by_nec_552(input.site), "otherwise": "not built by NEC article 552",
	"is": input.grounding.declared.chassis_bond_size,
	"at_least": fact.largest(array.concat([fact.number(8.36, "mm2")], [fact.times([r.area, r.per_pole]) | some r in b.cable_runs])),
} if some b in input.banks
