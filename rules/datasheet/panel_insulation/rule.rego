# METADATA
# title: System voltage of a panel well above its own voltage
# description: Panels are insulated for 600, 1000 or 1500 V; small ones for 50 V or more. A figure below twice the panel's own voltage is a slip.
# custom:
#   grade: fix
#   each: panels
#   source: IEC 61730, from memory; common practice
#   cites: [iec_61730]
#   remedy: compare the part with its data sheet, and correct the value that was copied wrongly
package codebooks.datasheet.panel_insulation

check contains {"about": p.id, "is": p.max_system_voltage, "at_least": fact.times([2, p.voc])} if some p in input.panels
