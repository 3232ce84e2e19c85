# METADATA
# title: Lithium batteries tested to a standard that is named
# description: Untested cells burn in ways that nobody has seen before. One code names the standard, the other a listing.
# custom:
#   grade: fix
#   each: banks
#   source: "AS/NZS 3001.2 lithium batteries: IEC 62619; RVIA LV lithium: listed by a recognized agency"
#   cites: [as_nzs_3001_2, rvia_lv]
#   remedy: use batteries whose maker shows the test or the listing
package codebooks.vehicle.lithium_standard

import data.codebooks.vehicle.shared

check contains {
	"about": b.id, "which": "AS/NZS 3001.2", "when": fact.all([shared.by_as_nzs_3001(input.site), shared.lithium(b.battery)]), "otherwise": "not built by AS/NZS 3001.2, or no lithium battery",
	"is_true": fact.one_of(b.declared.cell_standard, ["IEC 62619"]), "because": "it was not tested to IEC 62619",
} if some b in input.banks

check contains {
	"about": b.id, "which": "RVIA LV", "when": fact.all([shared.by_rvia_lv(input.site), shared.lithium(b.battery)]), "otherwise": "not built by RVIA LV, or no lithium battery",
	"is_true": b.declared.listed, "because": "no agency lists it",
} if some b in input.banks
