# METADATA
# title: A floating bank is switched and protected in both poles
# description: Where neither pole is bonded to the chassis a first fault shows nowhere, and the second burns in the pole without a device. The positive alone, close to its post, leaves little of that.
# custom:
#   grade: advise
#   each: banks
#   source: common practice
#   remedy: fit a two-pole switch and a device in each pole, or bond the negative to the chassis
#   equivalent:
#     - mutant: "2 / 1.01"
#       reason: "poles are counted whole: at least 1.98 is at least 2"
#     - mutant: "2 / 1.01 #2"
#       reason: "poles are counted whole: at least 1.98 is at least 2"
package codebooks.vehicle.bank_poles

import data.codebooks.vehicle.shared

check contains {
	"about": b.id, "which": "switch", "when": fact.all([shared.vehicle(input.site), fact.one_of(input.grounding.dc, ["floating"])]), "otherwise": "not a vehicle, or a pole is bonded",
	"is": d.poles, "at_least": fact.number(2, ""),
} if {
	some b in input.banks
	some d in b.disconnects
}

check contains {
	"about": b.id, "which": "device", "when": fact.all([shared.vehicle(input.site), fact.one_of(input.grounding.dc, ["floating"])]), "otherwise": "not a vehicle, or a pole is bonded",
	"is": p.poles, "at_least": fact.number(2, ""),
} if {
	some b in input.banks
	some p in b.protections
	not shared.in_each(p)
}

check contains {"about": b.id, "does_not_apply": "it has neither switch nor main device, which the book limits asks for"} if {
	some b in input.banks
	count(b.disconnects) == 0
	count([p | some p in b.protections; not shared.in_each(p)]) == 0
}
