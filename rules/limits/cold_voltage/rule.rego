# METADATA
# title: Coldest-morning voltage within the controller's limit
# description: Panels make more voltage the colder they are. Above its limit a controller is destroyed at first light, when cells are cold and nothing draws current yet.
# custom:
#   grade: stop
#   each: pv_inputs
#   waivable: false
#   source: maker's data sheet; method IEC 62548-1
#   cites: [iec_62548_1]
#   remedy: take panels out of series, or choose a controller for a higher voltage
package codebooks.limits.cold_voltage

check contains {"about": i.id, "is": i.voc_cold, "at_most": i.controller.pv_voltage_max} if some i in input.pv_inputs
