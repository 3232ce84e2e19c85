# METADATA
# title: Strings have a device where the others can overload the panels
# description: When one string fails, the others on the input feed it. Above the overcurrent rating of its panels each string needs a device of its own. The schools differ in how the sum is made; the workshop names its own.
# custom:
#   grade: fix
#   each: strings
#   source: IEC 62548-1 6.3, (n - 1) x Isc against the panels' rating; IEC 60364-7-712 712.431, more than two strings, KI x Isc against 1.35 x the rating
#   cites: [iec_62548_1, iec_60364_7_712]
#   remedy: put a gPV fuse in every string, or use fewer strings
#   equivalent:
#     - mutant: "2 x 1.01"
#       reason: "strings are counted whole: more than 2.02 is more than 2"
package codebooks.iec.string_device

check contains {
	"about": s.id, "is_true": fact.no(needed(s)),
	"because": "it has no device of its own, and the other strings can feed it more than its panels bear",
} if {
	some s in input.strings
	count(s.protections) == 0
}

check contains {"about": s.id, "does_not_apply": "it has a device, whose size is judged by itself"} if {
	some s in input.strings
	count(s.protections) > 0
}

needed(s) := fact.either(
	fact.one_of(input.params.string_fuse_school, ["hd_712"]),
	fact.all([
		fact.more_than(s.pv_input.parallel_strings, fact.number(2, "")),
		fact.more_than(bright(s), fact.times([1.35, s.series_fuse_max])),
	]),
	fact.more_than(
		fact.either(fact.one_of(input.params.string_fuse_school, ["isc_max"]), bright(s), s.fault_current),
		s.series_fuse_max,
	),
)

# What the others feed in bright sun; what the controller feeds back stays as it is.
bright(s) := fact.plus([
	s.fault_current,
	fact.times([fact.minus(input.params.ki, 1), fact.minus(s.pv_input.isc_stc, s.isc_stc)]),
])
