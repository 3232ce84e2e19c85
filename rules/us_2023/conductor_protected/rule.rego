# METADATA
# title: Every conductor is protected where its current comes from
# description: The bank feeds a fault in every conductor that leaves it. A PV conductor may do without a device only where all that can flow into it is within its ampacity.
# custom:
#   grade: stop
#   each: cable_runs
#   waivable: false
#   source: NEC 2023 240.21(H), 690.9(A)(1), 706.31(A)
#   cites: [nec_2023, nec_2023_memory]
#   remedy: put a fuse or breaker at the bank's end of the conductor
package codebooks.us_2023.conductor_protected

import data.codebooks.us_2023.shared

# A run on the bank's side is on no controller input, and has no fed(r).
check contains {
	"about": r.id, "when": shared.on_land(input.site), "otherwise": "not under this code",
	"is": fact.largest([fed(r), shared.maximum_current(r)]), "at_most": shared.corrected(r),
} if {
	some r in input.cable_runs
	count(r.protections) == 0
}

check contains {
	"about": r.id, "when": shared.premises(input.site), "otherwise": "not under this code",
	"is_true": count(r.protections) > 0, "because": "neither a fuse nor a breaker stands beside it",
} if {
	some r in input.cable_runs
	not shared.on_pv(r)
}

check contains {"about": r.id, "does_not_apply": "a device stands beside it: us_2023.device_protects_conductor"} if {
	some r in input.cable_runs
	shared.on_pv(r)
	count(r.protections) > 0
}

# Of a PV run, what all else on the input can feed into it: 1.25 x Isc of what does not flow
# through it in service, and the controller's back-feed.
fed(r) := fact.plus([fact.minus(r.fault_current_near, r.current), fact.times([0.25, fact.minus(i.isc_stc, r.current)])]) if some i in shared.inputs(r)
