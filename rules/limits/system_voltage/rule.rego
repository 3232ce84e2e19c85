# METADATA
# title: Coldest-morning voltage within what the panels are insulated for
# description: A panel's insulation is tested for its system voltage. Above it the frame can become live. Strings tied together all see the highest voltage among them.
# custom:
#   grade: stop
#   each: strings
#   waivable: false
#   source: maker's data sheet; IEC 61730 and IEC 62548-1
#   cites: [iec_61730, iec_62548_1]
#   remedy: take panels out of series, or use panels for a higher system voltage
package codebooks.limits.system_voltage

check contains {"about": s.id, "is": s.pv_input.voc_cold, "at_most": s.system_voltage_max} if some s in input.strings
