# METADATA
# title: String devices neither tire nor let the panels burn
# description: A device too small tires in bright sun; one larger than the panels bear protects nothing. Two schools set the lower end, and the workshop names its own.
# custom:
#   grade: fix
#   each: strings
#   source: IEC 62548-1 6.3, 1.5 to 2.4 x Isc and no more than the panels' rating; IEC 60364-7-712 712.433, at least 1.1 x ISC MAX (its upper end from memory)
#   cites: [iec_62548_1, iec_60364_7_712]
#   remedy: choose the rating between the two limits
package codebooks.iec.string_device_size

check contains {
	"about": s.id, "which": "least", "is": f.rating,
	"at_least": fact.either(fact.one_of(input.params.string_fuse_school, ["hd_712"]), fact.times([1.1, input.params.ki, s.isc_stc]), fact.times([1.5, s.isc_stc])),
} if {
	some s in input.strings
	some f in s.protections
}

check contains {
	"about": s.id, "which": "most", "is": f.rating,
	"at_most": fact.either(fact.one_of(input.params.string_fuse_school, ["hd_712"]), s.series_fuse_max, most(s, f)),
} if {
	some s in input.strings
	some f in s.protections
}

check contains {"about": s.id, "does_not_apply": "it has no device"} if {
	some s in input.strings
	count(s.protections) == 0
}

# The 2.4 is for devices that are due: where the others, in bright sun too, stay
# within the panels' rating, that alone counts.
most(s, f) := fact.either(fact.any([fact.at_least(tight(s), f.rating), due(s)]), tight(s), s.series_fuse_max)

tight(s) := fact.smallest([s.series_fuse_max, fact.times([2.4, s.isc_stc])])

due(s) := fact.more_than(fact.times([input.params.ki, s.fault_current]), s.series_fuse_max)
