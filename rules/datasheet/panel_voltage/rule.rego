# METADATA
# title: Voltage at maximum power below the open-circuit voltage, as far as a cell allows
# description: Vmp and Voc stand in neighbouring rows and get swapped. Even the best cells lose a twelfth of their voltage at maximum power.
# custom:
#   grade: fix
#   each: panels
#   source: cell physics; common practice
#   cites: [villalva]
#   remedy: compare the part with its data sheet, and correct the value that was copied wrongly
package codebooks.datasheet.panel_voltage

check contains {"about": p.id, "is": p.vmp, "at_most": fact.times([0.92, p.voc])} if some p in input.panels
