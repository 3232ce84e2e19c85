# METADATA
# title: Bank's highest voltage within what the converter bears
# description: A converter above its input limit is destroyed, and may pass the bank's voltage on to what hangs on it.
# custom:
#   grade: stop
#   each: supplies
#   waivable: false
#   source: maker's data sheet
#   remedy: choose a converter for a wider input
package codebooks.limits.converter_input_max

check contains {"about": u.id, "is": u.bank.voltage_max, "at_most": u.converter.input_max} if some u in input.supplies
