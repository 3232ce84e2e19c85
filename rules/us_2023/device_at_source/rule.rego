# METADATA
# title: Devices stand at the bank's end of their conductor
# description: "Of two sources the larger one feeds the fault: the bank, not the controller. A device at the far end leaves the conductor unprotected. The code gives no length; as close as practicable."
# custom:
#   grade: stop
#   each: protections
#   source: NEC 2023 690.9(A)(2), 240.21(H), 706.31(F)
#   cites: [nec_2023, nec_2023_memory]
#   remedy: move the device to the bank's end
package codebooks.us_2023.device_at_source

import data.codebooks.us_2023.shared

check contains {
	"about": p.id, "when": shared.premises(input.site), "otherwise": "not under this code",
	"is_true": p.declared.at_source, "because": "the device does not stand where the bank feeds the conductor",
} if {
	some p in input.protections
	bank_feeds(p)
}

check contains {"about": p.id, "does_not_apply": "not fed by the bank itself"} if {
	some p in input.protections
	not bank_feeds(p)
}

bank_feeds(p) if count(array.flatten([p.chargers, p.banks, p.ac_outputs, p.supplies, p.charge_sources])) > 0

bank_feeds(p) if {
	some l in p.loads
	count(l.banks) > 0
}
