# METADATA
# title: Fill factor as cells have it
# description: Rated power over Voc times Isc is between two thirds and seven eighths for crystalline panels. A digit that slipped falls out of that.
# custom:
#   grade: fix
#   each: panels
#   source: cell physics; common practice, from memory
#   cites: [villalva]
#   remedy: compare the part with its data sheet, and correct the value that was copied wrongly
package codebooks.datasheet.panel_fill_factor

check contains {
	"about": p.id, "is": fact.ratio(p.pmax, fact.times([p.voc, p.isc])),
	"between": [
		fact.either(crystalline(p), fact.number(65, "%"), fact.number(50, "%")),
		fact.either(crystalline(p), fact.number(87, "%"), fact.number(85, "%")),
	],
} if some p in input.panels

crystalline(p) := fact.one_of(p.technology, ["mono_si", "poly_si"])
