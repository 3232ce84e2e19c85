# METADATA
# title: An array on a building or on the ground has surge protection
# description: A near stroke of lightning raises the voltage of an array and of long conductors by thousands of volts, and takes the controller, the inverter and what hangs on them. A code may ask for it by its own measure.
# custom:
#   grade: advise
#   each: grounding
#   source: common practice; codes ask for it, each by its own measure
#   remedy: fit surge protective devices for direct current at the controller, with short leads to ground
package codebooks.practice.surge_protection

check contains {
	"about": input.grounding.id, "when": fact.one_of(input.site.place, ["building", "ground"]), "otherwise": "on a vehicle or a boat",
	"is_true": input.grounding.surge_protection, "because": "no surge protection is fitted",
} if count(input.arrays) > 0

check contains {"about": input.grounding.id, "does_not_apply": "there is no array"} if count(input.arrays) == 0
