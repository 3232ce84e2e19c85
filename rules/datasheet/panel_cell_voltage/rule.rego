# METADATA
# title: Open-circuit voltage divided by the cells in series is that of a cell
# description: "A crystalline cell gives 0.57 to 0.76 V. Half-cut cells are counted as they are wired: 108 half cells are 54 in series."
# custom:
#   grade: fix
#   each: panels
#   source: cell physics; common practice, from memory
#   cites: [villalva]
#   remedy: count the cells as they are wired in series, or correct Voc
package codebooks.datasheet.panel_cell_voltage

check contains {
	"about": p.id, "when": fact.one_of(p.technology, ["mono_si", "poly_si"]), "otherwise": "thin films differ too much among themselves",
	"is": fact.ratio(p.voc, p.cells),
	"between": [fact.number(0.57, "V"), fact.either(fact.one_of(p.technology, ["mono_si"]), fact.number(0.76, "V"), fact.number(0.68, "V"))],
} if some p in input.panels
