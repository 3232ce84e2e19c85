# METADATA
# title: Voltage coefficient has the sign and size of its technology
# description: Every cold-morning voltage rests on this figure. Without its minus sign, or with a zero too many, a string that destroys its controller seems safe.
# custom:
#   grade: stop
#   each: panels
#   source: cell physics; common practice, from memory
#   cites: [villalva]
#   remedy: compare the part with its data sheet, and correct the value that was copied wrongly
package codebooks.datasheet.panel_temp_voc

check contains {
	"about": p.id, "is": p.temp_voc,
	"between": [
		fact.either(crystalline(p), fact.number(-0.45, "%/K"), fact.number(-0.5, "%/K")),
		fact.either(crystalline(p), fact.number(-0.2, "%/K"), fact.number(-0.1, "%/K")),
	],
} if some p in input.panels

crystalline(p) := fact.one_of(p.technology, ["mono_si", "poly_si"])
