# METADATA
# title: Lithium cells tested to a standard that is named
# description: Untested cells burn in ways that nobody has seen before.
# custom:
#   grade: fix
#   each: banks
#   source: ABYC E-13.5.4, one of IEC 62133, 62619, 62620, SAE J2929, UL 1642, 1973, 2054; ISO 23625, IEC 62619 and IEC 62620 both
#   cites: [abyc_e13, iso_23625]
#   remedy: use batteries whose maker names the standard of their cells
package codebooks.marine.lithium_cells

import data.codebooks.marine.shared

check contains {
	"about": b.id, "when": shared.large_lithium(b), "otherwise": "not a boat, or no lithium bank of the size that the standards speak of",
	"is_true": fact.either(
		shared.by("abyc"),
		fact.no(fact.one_of(b.declared.cell_standard, ["none"])),
		fact.one_of(b.declared.cell_standard, ["IEC 62619 and IEC 62620"]),
	), "because": "its cells were not tested to what the standard names",
} if some b in input.banks
