# METADATA
# title: Equalizing voltage of a flooded battery above its absorption
# description: Equalizing is a stronger charge on purpose. A figure below absorption is that of a single battery of a bank, or a float voltage.
# custom:
#   grade: fix
#   each: batteries
#   source: maker's data sheet; common practice
#   remedy: compare the part with its data sheet, and correct the value that was copied wrongly
package codebooks.datasheet.battery_equalize

check contains {
	"about": b.id, "when": fact.one_of(b.chemistry, ["flooded"]), "otherwise": "not a flooded battery: limits.equalize",
	"is": b.equalize_max, "at_least": b.absorption_max,
} if some b in input.batteries
