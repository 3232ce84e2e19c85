# METADATA
# title: String fuse large enough for the string's own current
# description: Sun is steady for hours and brighter at the edges of clouds. A fuse close to the string's own current ages and opens on the best day of the year.
# custom:
#   grade: fix
#   each: strings
#   source: "common practice: 1.56 times the short-circuit current; a workshop may set another factor"
#   remedy: take the next larger fuse that the panel's series-fuse rating allows
package codebooks.limits.string_fuse_carries

check contains {"about": s.id, "is": f.rating, "at_least": fact.times([input.params.string_fuse_margin, s.isc_stc])} if {
	some s in input.strings
	some f in s.protections
}

check contains {"about": s.id, "does_not_apply": "the string has no fuse of its own"} if {
	some s in input.strings
	count(s.protections) == 0
}
