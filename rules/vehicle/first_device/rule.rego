# METADATA
# title: The bank's device close to it
# description: Between battery and device nothing protects the cable, and a vehicle shakes and chafes it.
# custom:
#   grade: fix
#   each: protections
#   source: "AS/NZS 3001.2 battery protection: within 200 mm, or straight outside the enclosure, or less than 1.0 m of enclosed cable; NEC 552.10(E)(4): within 18 in of where the supply joins"
#   cites: [as_nzs_3001_2, nec_552]
#   remedy: move the device to the battery, or enclose the cable
package codebooks.vehicle.first_device

import data.codebooks.vehicle.shared

check contains {
	"about": p.id, "which": "AS/NZS 3001.2", "when": shared.by_as_nzs_3001(input.site), "otherwise": "not built by AS/NZS 3001.2",
	"is_true": fact.any([
		fact.at_least(fact.number(200, "mm"), p.distance),
		p.declared.outside_enclosure,
		fact.all([p.declared.enclosed_cable, fact.more_than(fact.number(1, "m"), p.distance)]),
	]),
	"because": "it is farther than 200 mm, not straight outside the enclosure, and the cable is not enclosed or 1 m long",
	"also": [p.distance],
} if {
	some p in input.protections
	main(p)
}

check contains {
	"about": p.id, "which": "NEC 552", "when": shared.by_nec_552(input.site), "otherwise": "not built by NEC article 552",
	"is": p.distance, "at_most": fact.number(18, "in"),
} if {
	some p in input.protections
	main(p)
}

check contains {"about": p.id, "does_not_apply": "not the main of a bank"} if {
	some p in input.protections
	not main(p)
}

main(p) if {
	count(p.banks) > 0
	not shared.in_each(p)
}
