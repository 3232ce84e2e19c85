# METADATA
# title: Long PV cables have surge protection
# description: The loop between panels and controller catches the field of lightning nearby. From a length that the frequency of lightning sets, surge protection is due.
# custom:
#   grade: fix
#   each: pv_inputs
#   source: IEC 60364-7-712 712.443, length against the critical length of IEC 61643-32
#   cites: [iec_61643_32, iec_60364_7_712_memory]
#   remedy: fit surge protection for direct current, or shorten the route
package codebooks.iec.surge

check contains {
	"about": i.id,
	"when": fact.one_of(input.site.place, ["building", "ground"]), "otherwise": "neither on a building nor on the ground",
	"is_true": fact.any([input.grounding.surge_protection, fact.more_than(input.site.declared.critical_length, fact.plus(lengths(i)))]),
	"because": "the cables reach the critical length, and no surge protection is fitted",
} if {
	some i in input.pv_inputs
	count(lengths(i)) > 0
}

check contains {"about": i.id, "does_not_apply": "the design describes no PV cable"} if {
	some i in input.pv_inputs
	count(lengths(i)) == 0
}

# Array cables, and of each array the longest string cable: routes side by side
# count once.
lengths(i) := array.concat(
	[r.length | some a in input.arrays; a.pv_input.id == i.id; some r in a.cable_runs],
	[longest(a) | some a in input.arrays; a.pv_input.id == i.id; count(strings_of(a)) > 0],
)

longest(a) := fact.largest(strings_of(a))

strings_of(a) := [r.length | some s in input.strings; s.array.id == a.id; some r in s.cable_runs]
