# METADATA
# title: Converter works down to where loads are cut off
# description: Radios and controls often hang on the converter. They should be the last to go.
# custom:
#   grade: fix
#   each: supplies
#   source: maker's data sheet
#   remedy: choose a converter for a wider input, or raise the low-voltage disconnect
package codebooks.limits.converter_input_min

check contains {"about": u.id, "is": u.bank.low_voltage_disconnect, "at_least": u.converter.input_min} if some u in input.supplies
