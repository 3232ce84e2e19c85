# METADATA
# title: Strings that others can feed beyond their rating have a fuse within it
# description: "A string needs no device only where all that can flow into it, 1.25 x Isc of the other strings and the controller's back-feed, is within both the panels' series-fuse rating and the ampacity of its conductor. A fuse that is fitted may not be larger than the panels' rating. One that two strings share protects neither: each string would need the rating of the fuse and what the other feeds."
# custom:
#   grade: stop
#   each: strings
#   waivable: false
#   source: NEC 2023 690.9(A)(1), 690.9(B), 690.8(D), 110.3(B)
#   cites: [nec_2023, nec_2023_memory]
#   remedy: put a fuse listed for PV, no larger than the panels' series-fuse rating, in every string
package codebooks.us_2023.string_protection

import data.codebooks.us_2023.shared

check contains {
	"about": s.id, "which": "fuse", "when": shared.on_land(input.site), "otherwise": "not under this code",
	"is": f.rating, "at_most": s.series_fuse_max,
} if {
	some s in input.strings
	some f in s.protections
}

check contains {
	"about": s.id, "which": "panels", "when": shared.on_land(input.site), "otherwise": "not under this code",
	"is": fed(s), "at_most": s.series_fuse_max,
	"say": "Without a fuse {is} can flow into {about}, whose panels bear {limit}.",
} if {
	some s in input.strings
	count(s.protections) == 0
}

check contains {
	"about": s.id, "which": "conductor", "when": shared.on_land(input.site), "otherwise": "not under this code",
	"is": fed(s), "at_most": shared.corrected(r),
	"say": "Without a fuse {is} can flow into {about}, whose conductor carries {limit}.",
} if {
	some s in input.strings
	count(s.protections) == 0
	some r in shared.runs_beside(s, input.cable_runs)
}

fed(s) := fact.plus([s.fault_current, fact.times([0.25, fact.minus(s.pv_input.isc_stc, s.isc_stc)])])
