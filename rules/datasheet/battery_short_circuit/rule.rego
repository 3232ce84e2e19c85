# METADATA
# title: Short-circuit current agrees with the discharge current permitted
# description: "Fuses are chosen by the short-circuit current: too small a figure hides a danger. At its largest permitted current a battery must still be above its lowest voltage, and the resistance behind its short-circuit current tells how far it sags. Often the figure is the management system's own trip, or a resistance in the wrong unit."
# custom:
#   grade: fix
#   each: batteries
#   source: maker's data sheet; Ohm's law on its own figures
#   remedy: give the prospective short-circuit current of the cells, or their internal resistance; the management system's trip is not it
package codebooks.datasheet.battery_short_circuit

check contains {
	"about": b.id, "is": fact.times([b.nominal, fact.minus(1, fact.ratio(b.discharge_current_max, b.short_circuit))]),
	"at_least": b.discharge_voltage_min,
	"say": "With this short-circuit current {about} would sag to {is} at its largest discharge current; its lowest voltage is {limit}.",
} if some b in input.batteries
