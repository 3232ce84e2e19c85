# METADATA
# title: Fuses and breakers carry their circuit's current
# description: A device near its rating for hours runs hot, ages and opens without a fault. A quarter of spare is usual, unless its maker rates it to carry its rating for ever. Behind an array a quarter is added to the short-circuit current first, as cloud edges and snow bring it, which makes 1.56 times in all.
# custom:
#   grade: fix
#   each: protections
#   source: "common practice: 1.25 times the current; a workshop may set another factor; 1.25 for bright sun as IEC 62548-1 takes it"
#   cites: [iec_62548_1]
#   remedy: take the next larger device that the conductor allows
package codebooks.limits.protection_carries

check contains {"about": p.id, "which": "current", "is": p.rating, "at_least": borne(p)} if some p in input.protections

check contains {
	"about": p.id, "which": "for hours", "when": fact.all([fact.at_least(p.rating, borne(p)), fact.no(fact.at_least(p.rating, spared(p)))]),
	"otherwise": "its rating has the spare that any device needs, or is too small outright",
	"is_true": p.continuous_rated, "because": "its rating has too little spare to carry this current for hours",
	"also": [p.rating, spared(p)],
} if some p in input.protections

spared(p) := fact.times([input.params.continuous_margin, borne(p)])

# Of an array's strings together the short-circuit current and a quarter more, as
# bright cloud edges bring it; a string's own device has limits.string_fuse_carries.
borne(p) := fact.times([1.25, p.current]) if count(p.arrays) > 0

borne(p) := p.current if count(p.arrays) == 0
