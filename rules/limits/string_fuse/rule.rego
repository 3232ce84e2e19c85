# METADATA
# title: Strings that others can feed beyond their rating have a fuse within it
# description: When one string fails, all others on the input feed it, and the controller may too. Above the panel's series-fuse rating its wiring burns. A fuse must then stand in every string, and be no larger than that rating.
# custom:
#   grade: stop
#   each: strings
#   waivable: false
#   source: maker's data sheet (maximum series fuse); IEC 61730 and IEC 62548-1
#   cites: [iec_61730, iec_62548_1]
#   remedy: put a fuse for direct current, no larger than the panel's series-fuse rating, in every string; one that two strings share protects neither
package codebooks.limits.string_fuse

check contains {
	"about": s.id, "when": fact.any([fact.at_least(s.series_fuse_max, f.rating), needed(s)]),
	"otherwise": "the other strings cannot exceed the panel's rating",
	"is": f.rating, "at_most": s.series_fuse_max,
} if {
	some s in input.strings
	some f in s.protections
}

check contains {"about": s.id, "is_true": fact.no(needed(s)), "because": "the string has no fuse of its own, and the others can feed it beyond the panel's rating"} if {
	some s in input.strings
	count(s.protections) == 0
}

# Needed where the others together can exceed the panel's rating; exactly at it
# they cannot. Under bright cloud edges they give a quarter more than by their
# sheets; what the controller feeds back counts with them as it is.
needed(s) := fact.more_than(fact.plus([s.fault_current, fact.times([0.25, fact.minus(s.pv_input.isc_stc, s.isc_stc)])]), s.series_fuse_max)
