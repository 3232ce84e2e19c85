# METADATA
# title: Inverter's inrush does not trip or burn the battery's switch
# description: An inverter's empty capacitors take hundreds of amperes when it is joined. A management system without pre-charge trips, or its switches weld.
# custom:
#   grade: fix
#   each: ac_outputs
#   source: common practice
#   remedy: use batteries with pre-charge, or a pre-charge switch with resistor and a waiver that names it
package codebooks.limits.precharge

import data.codebooks.limits.shared

check contains {
	"about": o.id, "when": shared.managed(o.bank.battery), "otherwise": "a lead battery has no electronics that inrush trips",
	"is_true": o.bank.battery.bms.precharge, "because": "nothing charges the inverter's capacitors before it is joined",
} if some o in input.ac_outputs
