# METADATA
# title: First device close to the bank
# description: "Between the bank and its first fuse nothing protects the conductor: chafed there, it burns until the bank is empty."
# custom:
#   grade: fix
#   each: protections
#   source: common practice; makers and codes name other figures, and a workshop may set its own
#   remedy: move the fuse to the battery's positive post or the bus
package codebooks.limits.first_device

import data.codebooks.limits.shared

check contains {"about": p.id, "is": p.distance, "at_most": input.params.first_device_max} if {
	some p in input.protections
	shared.bank_feeds(p)
}

check contains {"about": p.id, "does_not_apply": "no bank feeds a fault here"} if {
	some p in input.protections
	not shared.bank_feeds(p)
}
