# METADATA
# title: A floating bank is switched and protected in both poles
# description: Where no pole is earthed both are live against everything that is. After a first fault to earth, which nobody sees, the pole without a device feeds the second.
# custom:
#   grade: fix
#   each: banks
#   source: IEC 60364-4-43 431.1, a device in every live conductor, and IEC 60364-5-53 536.2, isolation of all of them (both from memory)
#   cites: [iec_60364_4_43, iec_60364_5_53_memory]
#   remedy: fit a two-pole switch, and a fuse or breaker in each pole of the bank; or earth one pole
#   equivalent:
#     - mutant: "2 / 1.01"
#       reason: "poles are counted whole: at least 1.98 is at least 2"
#     - mutant: "2 / 1.01 #2"
#       reason: "poles are counted whole: at least 1.98 is at least 2"
package codebooks.iec.bank_poles

import data.codebooks.iec.shared

check contains {
	"about": b.id, "which": "switch", "when": fact.one_of(input.grounding.dc, ["floating"]), "otherwise": "a pole is earthed",
	"is": d.poles, "at_least": fact.number(2, ""),
} if {
	some b in input.banks
	some d in b.disconnects
}

check contains {
	"about": b.id, "which": "device", "when": fact.one_of(input.grounding.dc, ["floating"]), "otherwise": "a pole is earthed",
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
