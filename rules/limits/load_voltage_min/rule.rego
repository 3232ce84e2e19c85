# METADATA
# title: Loads work down to where they are cut off
# description: A load that gives up before the low-voltage disconnect leaves part of the bank unused, and a fridge that tries again and again drains it.
# custom:
#   grade: fix
#   each: loads
#   source: maker's data sheet
#   remedy: use a load with a wider input, or raise the low-voltage disconnect
package codebooks.limits.load_voltage_min

check contains {"about": l.id, "is": l.source_voltage_min, "at_least": l.voltage_min} if {
	some l in input.loads
	count(l.ac_outputs) == 0
}

check contains {"about": l.id, "does_not_apply": "on an inverter, which holds its voltage"} if {
	some l in input.loads
	count(l.ac_outputs) > 0
}
