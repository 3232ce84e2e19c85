# METADATA
# title: Bank's highest voltage within what the inverter bears
# description: An inverter above its input limit switches off, or is destroyed. Equalizing and cold compensation bring the highest voltages.
# custom:
#   grade: stop
#   each: ac_outputs
#   waivable: false
#   source: maker's data sheet
#   remedy: lower the highest setting, or choose an inverter for a wider input
package codebooks.limits.inverter_dc_max

check contains {"about": o.id, "is": o.bank.voltage_max, "at_most": o.inverter.dc_max} if some o in input.ac_outputs
