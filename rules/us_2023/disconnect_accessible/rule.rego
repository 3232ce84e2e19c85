# METADATA
# title: Disconnects can be reached quickly and locked
# description: In a fire or an accident somebody must reach the switch without a ladder, and be sure that it stays open while they work.
# custom:
#   grade: fix
#   each: disconnects
#   source: NEC 2023 690.13, 690.15(C), 706.15(B)
#   cites: [nec_2023]
#   remedy: place it where it can be reached, and choose one that can be locked open
package codebooks.us_2023.disconnect_accessible

import data.codebooks.us_2023.shared

check contains {
	"about": d.id, "which": "reach", "when": shared.covered(d, input.site), "otherwise": "not under this code",
	"is_true": d.declared.readily_accessible, "because": "it cannot be reached quickly",
} if some d in input.disconnects

# 706.15(B): a bank's may also stand in sight within 3 m.
check contains {
	"about": d.id, "which": "lock", "when": shared.covered(d, input.site), "otherwise": "not under this code",
	"is_true": secured(d), "because": "it cannot be locked open, and does not stand in sight within 3 m",
} if some d in input.disconnects

secured(d) := d.declared.lockable if count(d.banks) == 0

secured(d) := fact.any([d.declared.lockable, fact.at_least(fact.number(3, "m"), d.declared.distance_to_equipment)]) if count(d.banks) > 0
