# METADATA
# title: Array has a switch for its voltage and current under load
# description: An arc of direct current does not go out by itself. The switch between array and controller breaks the array's current at its coldest voltage, in every pole that is not earthed.
# custom:
#   grade: fix
#   each: arrays
#   source: IEC 60364-7-712 712.536 and IEC 62548-1 7.4 (from memory; voltage and current as a guide for installers has them)
#   cites: [iec_60364_7_712_memory, iec_62548_1_memory]
#   remedy: fit a switch-disconnector for direct current, rated for the coldest voltage and 1.25 times the strings' current
#   equivalent:
#     - mutant: "2 / 1.01"
#       reason: "poles are counted whole: at least 1.98 is at least 2"
#     - mutant: "1 / 1.01"
#       reason: "poles are counted whole: at least 0.99 is at least 1"
#     - mutant: "2 / 1.01 #2"
#       reason: "poles are counted whole: at least 1.98 is at least 2"
#     - mutant: "1 / 1.01 #2"
#       reason: "poles are counted whole: at least 0.99 is at least 1"
#     - mutant: "1 x 1.01 #3"
#       reason: "nothing stands there: 0 is fewer than either"
#     - mutant: "1 / 1.01 #3"
#       reason: "nothing stands there: 0 is fewer than either"
package codebooks.iec.array_switch

check contains {"about": a.id, "which": "direct current", "is_true": d.dc_rated, "because": "it is not rated for direct current"} if {
	some a in input.arrays
	some d in a.disconnects
}

check contains {"about": a.id, "which": "under load", "is_true": d.load_break, "because": "it may not be opened under load"} if {
	some a in input.arrays
	some d in a.disconnects
}

check contains {"about": a.id, "which": "voltage", "is": d.voltage, "at_least": a.pv_input.voc_cold} if {
	some a in input.arrays
	some d in a.disconnects
}

check contains {"about": a.id, "which": "current", "is": d.rating, "at_least": fact.times([input.params.ki, d.current])} if {
	some a in input.arrays
	some d in a.disconnects
}

check contains {"about": a.id, "which": "poles", "is": d.poles, "at_least": fact.either(fact.one_of(input.grounding.dc, ["floating"]), fact.number(2, ""), fact.number(1, ""))} if {
	some a in input.arrays
	some d in a.disconnects
}

# A breaker serves as a switch; a fuse does not.
check contains {"about": a.id, "which": "breaker", "is_true": fact.one_of(p.kind, ["breaker"]), "because": "a fuse is no switch, and there is no disconnect"} if {
	some a in input.arrays
	count(a.disconnects) == 0
	some p in a.protections
}

check contains {"about": a.id, "which": "poles", "is": p.poles, "at_least": fact.either(fact.one_of(input.grounding.dc, ["floating"]), fact.number(2, ""), fact.number(1, ""))} if {
	some a in input.arrays
	count(a.disconnects) == 0
	some p in a.protections
}

check contains {
	"about": a.id, "is": fact.number(0, ""), "at_least": fact.number(1, ""),
	"say": "Nothing can switch {about} off.",
} if {
	some a in input.arrays
	count(array.concat(a.disconnects, a.protections)) == 0
}
