# METADATA
# title: Loads bear the highest voltage of what feeds them
# description: A load on the bank sees absorption, equalizing and cold compensation. Lamps and radios for 24 V often bear less.
# custom:
#   grade: fix
#   each: loads
#   source: maker's data sheet
#   remedy: use a load with a wider input, or feed it through a converter
package codebooks.limits.load_voltage_max

check contains {"about": l.id, "is": l.source_voltage_max, "at_most": l.voltage_max} if {
	some l in input.loads
	count(l.ac_outputs) == 0
}

check contains {"about": l.id, "does_not_apply": "on an inverter, which holds its voltage"} if {
	some l in input.loads
	count(l.ac_outputs) > 0
}
