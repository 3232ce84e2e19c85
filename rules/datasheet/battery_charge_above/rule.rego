# METADATA
# title: Iron-phosphate and nmc batteries are not charged below freezing
# description: Their cells must not be charged below 0 degC, at any current. A lower figure on a sheet is that of the case, of discharging, or of a battery that heats itself first.
# custom:
#   grade: fix
#   each: batteries
#   source: maker's data sheet; common practice
#   remedy: give the cells' own limit for charging, as the maker states it
package codebooks.datasheet.battery_charge_above

check contains {
	"about": b.id, "when": fact.one_of(b.chemistry, ["lifepo4", "nmc"]), "otherwise": "a chemistry that may be charged below freezing",
	"is": b.charge_above, "at_least": fact.number(0, "degC"),
} if some b in input.batteries
