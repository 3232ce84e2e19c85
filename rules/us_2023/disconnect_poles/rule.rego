# METADATA
# title: Disconnects open every conductor that is not solidly grounded
# description: A pole that stays connected keeps the array's voltage on the conductors that somebody works on. One that is grounded through a ground-fault device is not solidly grounded.
# custom:
#   grade: stop
#   each: disconnects
#   source: NEC 2023 690.13, 690.15(C), 706.15(A)
#   cites: [nec_2023, nec_2023_memory]
#   remedy: use a switch of two poles
#   equivalent:
#     - mutant: "2 / 1.01"
#       reason: "poles are counted whole: at least 1.98 is at least 2"
#     - mutant: "2 / 1.01 #2"
#       reason: "poles are counted whole: at least 1.98 is at least 2"
#     - mutant: "1 / 1.01"
#       reason: "poles are counted whole: at least 0.99 is at least 1"
package codebooks.us_2023.disconnect_poles

import data.codebooks.us_2023.shared

check contains {
	"about": d.id, "when": fact.all([shared.covered(d, input.site), fact.no(shared.solidly_grounded(input.grounding))]),
	"otherwise": "one pole is solidly grounded, or not under this code",
	"is": d.poles, "at_least": due(d),
} if {
	some d in input.disconnects
	not shared.on_ac(d)
}

check contains {"about": d.id, "does_not_apply": "on the AC side"} if {
	some d in input.disconnects
	shared.on_ac(d)
}

# A PV circuit has two such poles; a bank that is grounded at one has one.
due(d) := fact.number(2, "") if shared.on_pv(d)

due(d) := fact.either(fact.one_of(input.grounding.dc, ["floating"]), fact.number(2, ""), fact.number(1, "")) if not shared.on_pv(d)
