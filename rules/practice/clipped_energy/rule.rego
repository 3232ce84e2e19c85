# METADATA
# title: Little of a year's energy is clipped
# description: More array than the controller can use is good for mornings and winter. What its current limit keeps out all year is paid for and lost.
# custom:
#   grade: advise
#   each: chargers
#   source: common practice
#   remedy: raise the bank's voltage, add a controller, or leave the array smaller
package codebooks.practice.clipped_energy

check contains {
	"about": c.id, "when": fact.one_of(c.controller.kind, ["mppt"]), "otherwise": "a PWM controller cannot clip",
	"is": c.clipped_energy, "at_most": input.params.clipped_energy_max,
} if some c in input.chargers
