# METADATA
# title: Controller works at the bank's voltage
# description: A controller knows a few bank voltages only. At another one it does not charge, or charges as if the bank were one that it knows.
# custom:
#   grade: stop
#   each: chargers
#   source: maker's data sheet
#   remedy: choose a controller for this bank voltage, or join the batteries for one that it knows
package codebooks.limits.bank_voltage_supported

check contains {
	"about": c.id, "is_true": c.bank_voltage_supported, "also": [c.bank.system_voltage],
	"because": "the bank's voltage is none that the controller works at",
} if some c in input.chargers
