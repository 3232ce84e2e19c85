# METADATA
# title: Devices on the bank's side open every ungrounded pole
# description: On a floating bank a fault to ground and one beside it may pass the pole without a device. A grounded pole is not opened alone.
# custom:
#   grade: fix
#   each: protections
#   source: NEC 2023 240.15, 240.22
#   cites: [nec_2023_memory]
#   remedy: put a device into each ungrounded pole
#   equivalent:
#     - mutant: "2 / 1.01"
#       reason: "poles are counted whole: at least 1.98 is at least 2"
package codebooks.us_2023.device_poles

import data.codebooks.us_2023.shared

check contains {
	"about": p.id, "when": fact.all([shared.premises(input.site), fact.one_of(input.grounding.dc, ["floating"])]), "otherwise": "one pole is grounded, or not under this code",
	"is": p.poles, "at_least": fact.number(2, ""),
} if {
	some p in input.protections
	not shared.on_pv(p)
	not shared.on_ac(p)
}

check contains {"about": p.id, "does_not_apply": "in a PV circuit, where one pole may do, or on the AC side"} if {
	some p in input.protections
	apart(p)
}

apart(p) if shared.on_pv(p)

apart(p) if shared.on_ac(p)
