# METADATA
# title: Current at maximum power below the short-circuit current, as far as a cell allows
# description: "Imp and Isc stand in neighbouring rows and get swapped. Fuses and inputs are judged by Isc: too small a figure hides a danger."
# custom:
#   grade: fix
#   each: panels
#   source: cell physics; common practice
#   cites: [villalva]
#   remedy: compare the part with its data sheet, and correct the value that was copied wrongly
package codebooks.datasheet.panel_current

check contains {"about": p.id, "is": p.imp, "at_most": fact.times([0.98, p.isc])} if some p in input.panels
