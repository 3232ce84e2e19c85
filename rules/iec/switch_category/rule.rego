# METADATA
# title: PV switches are of a category for their strings
# description: Where several strings meet, current can flow back and exceed one string's. Category PV2 is made for that, PV1 for one string alone; PV0 must not be opened under load. DC-21B and DC-22B are tested for more than PV needs.
# custom:
#   grade: fix
#   each: disconnects
#   source: IEC 60947-3 Annex D and IEC 62548-1 7.3 (PV0 from memory)
#   cites: [iec_60947_3, iec_62548_1_memory]
#   remedy: choose a switch of category DC-PV2
#   equivalent:
#     - mutant: "1 x 1.01"
#       reason: "strings are counted whole: more than 1.01 is more than 1"
package codebooks.iec.switch_category

check contains {
	"about": d.id, "because": "its category is not for what can flow here",
	"is_true": fact.either(
		fact.more_than(i.parallel_strings, fact.number(1, "")),
		fact.one_of(d.declared.category, ["PV2", "DC21B", "DC22B"]),
		fact.one_of(d.declared.category, ["PV1", "PV2", "DC21B", "DC22B"]),
	),
} if {
	some d in input.disconnects
	some i in array.concat([a.pv_input | some a in d.arrays], [s.pv_input | some s in d.strings])
}

check contains {"about": d.id, "does_not_apply": "it switches no PV circuit"} if {
	some d in input.disconnects
	count(array.concat(d.arrays, d.strings)) == 0
}
