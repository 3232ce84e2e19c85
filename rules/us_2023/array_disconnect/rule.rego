# METADATA
# title: A disconnect separates the PV system from everything else
# description: Without a switch the array keeps its voltage on whatever it feeds as long as there is light. A breaker that current may pass both ways serves too; a fuse does not.
# custom:
#   grade: stop
#   each: arrays
#   source: NEC 2023 690.13, 690.15
#   cites: [nec_2023]
#   remedy: put a switch that may be opened under load, or a breaker that current may pass both ways, between array and controller
#   equivalent:
#     - mutant: "2 / 1.01"
#       reason: "poles are counted whole: at least 1.98 is at least 2"
package codebooks.us_2023.array_disconnect

import data.codebooks.us_2023.shared

check contains {
	"about": a.id, "when": shared.on_land(input.site), "otherwise": "not under this code",
	"is_true": fact.any(array.concat(switches(a), breakers(a))), "because": "no switch and no two-way breaker that opens every ungrounded pole stands between the array and its controller",
} if {
	some a in input.arrays
	count(array.concat(a.disconnects, a.protections)) > 0
}

check contains {
	"about": a.id, "when": shared.on_land(input.site), "otherwise": "not under this code",
	"is_true": false, "because": "no switch stands between the array and its controller",
} if {
	some a in input.arrays
	count(array.concat(a.disconnects, a.protections)) == 0
}

# That a switch is there needs no fact; true stands for it.
switches(a) := [true | some d in a.disconnects]

# It must open both poles, as a switch must: disconnect_poles asks that of switches.
breakers(a) := [fact.all([fact.one_of(p.kind, ["breaker"]), fact.no(p.polarized), fact.any([fact.at_least(p.poles, fact.number(2, "")), shared.solidly_grounded(input.grounding)])]) | some p in a.protections]
