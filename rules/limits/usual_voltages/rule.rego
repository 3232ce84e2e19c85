# METADATA
# title: Charging voltages no higher than is usual for the chemistry
# description: After a change of battery the old preset often stays. These are the figures that the trade goes by for each chemistry; the battery's own are judged apart, and win.
# custom:
#   grade: advise
#   each: chargers
#   source: common practice, partly from memory; makers differ
#   cites: [cells]
#   remedy: check the settings against the battery's data sheet
package codebooks.limits.usual_voltages

check contains {
	"about": c.id, "which": "absorption",
	"is": c.absorption_per_cell, "at_most": fact.lookup("usual_absorption", [c.bank.battery.chemistry]),
} if some c in input.chargers

check contains {
	"about": c.id, "which": "float",
	"when": fact.one_of(c.bank.battery.chemistry, ["flooded", "agm", "gel", "lifepo4"]), "otherwise": "there is no usual figure for this chemistry",
	"is": c.float_per_cell, "at_most": fact.lookup("usual_float", [c.bank.battery.chemistry]),
} if some c in input.chargers

check contains {
	"about": c.id, "which": "equalizing",
	"when": fact.all([fact.one_of(c.bank.battery.chemistry, ["flooded"]), c.settings.equalize]), "otherwise": "not a flooded battery, or not equalized",
	"is": c.equalize_per_cell, "at_most": input.params.usual_equalizing,
} if some c in input.chargers
