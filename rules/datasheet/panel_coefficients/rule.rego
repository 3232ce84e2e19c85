# METADATA
# title: Power falls faster with heat than open-circuit voltage
# description: "In crystalline panels the power coefficient is the larger of the two: it holds the voltage's and the fill factor's loss. Where it is not, the two rows were swapped."
# custom:
#   grade: fix
#   each: panels
#   source: cell physics; common practice
#   remedy: compare the part with its data sheet, and correct the value that was copied wrongly
package codebooks.datasheet.panel_coefficients

check contains {
	"about": p.id, "when": fact.one_of(p.technology, ["mono_si", "poly_si"]), "otherwise": "thin films differ too much among themselves",
	"is": p.temp_pmax, "at_most": p.temp_voc,
} if some p in input.panels
