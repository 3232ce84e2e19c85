# METADATA
# title: Surge of an inverter at least its continuous power
# description: The power on the box is often the surge. Currents and fuses go by the continuous power.
# custom:
#   grade: fix
#   each: inverters
#   source: maker's data sheet
#   remedy: compare the part with its data sheet, and correct the value that was copied wrongly
package codebooks.datasheet.inverter_surge

check contains {"about": i.id, "is": i.surge, "at_least": i.continuous} if some i in input.inverters
