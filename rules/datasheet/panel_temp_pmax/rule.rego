# METADATA
# title: Power coefficient has the sign and size of its technology
# description: Power falls with heat by a quarter to half a percent a kelvin. Hot-day voltage rests on this figure.
# custom:
#   grade: fix
#   each: panels
#   source: cell physics; common practice, from memory
#   remedy: compare the part with its data sheet, and correct the value that was copied wrongly
package codebooks.datasheet.panel_temp_pmax

check contains {
	"about": p.id, "is": p.temp_pmax,
	"between": [
		fact.number(-0.55, "%/K"),
		fact.either(fact.one_of(p.technology, ["thin_film"]), fact.number(-0.1, "%/K"), fact.number(-0.2, "%/K")),
	],
} if some p in input.panels
