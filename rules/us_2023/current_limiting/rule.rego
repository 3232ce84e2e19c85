# METADATA
# title: The bank's own device limits current
# description: A current-limiting device beside the bank cuts the fault off before its peak, so that everything behind it has less to bear.
# custom:
#   grade: fix
#   each: banks
#   source: NEC 2023 706.31(D)
#   cites: [nec_2023_memory]
#   remedy: use a class T or J fuse, or a device listed as current-limiting, beside the bank
package codebooks.us_2023.current_limiting

import data.codebooks.us_2023.shared

check contains {
	"about": b.id, "when": shared.premises(input.site), "otherwise": "not under this code",
	"is_true": fact.any([limits_current(p) | some p in devices(b)]), "because": "no current-limiting device stands beside the bank",
} if {
	some b in input.banks
	count(devices(b)) > 0
}

check contains {
	"about": b.id, "when": shared.premises(input.site), "otherwise": "not under this code",
	"is_true": false, "because": "no fuse or breaker stands in the bank's main conductors",
} if {
	some b in input.banks
	count(devices(b)) == 0
}

devices(b) := [p | some p in b.protections; not shared.in_each(p)]

limits_current(p) := fact.any([fact.all([fact.one_of(p.kind, ["fuse"]), fact.one_of(p.class, ["T", "J", "CC", "CF", "RK1", "RK5", "L"])]), p.declared.current_limiting])
