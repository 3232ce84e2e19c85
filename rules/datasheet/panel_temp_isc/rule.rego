# METADATA
# title: Current coefficient has the sign and size of its technology
# description: "Current rises a little with heat: some hundredths of a percent a kelvin. A figure in mA/K that was taken for percent is ten times off."
# custom:
#   grade: fix
#   each: panels
#   source: cell physics; common practice, from memory
#   cites: [villalva]
#   remedy: compare the part with its data sheet, and correct the value that was copied wrongly
package codebooks.datasheet.panel_temp_isc

check contains {
	"about": p.id, "is": p.temp_isc,
	"between": [
		fact.either(fact.one_of(p.technology, ["thin_film"]), fact.number(-0.05, "%/K"), fact.number(0.01, "%/K")),
		fact.number(0.12, "%/K"),
	],
} if some p in input.panels
