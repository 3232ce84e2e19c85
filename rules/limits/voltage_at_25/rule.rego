# METADATA
# title: Array voltage at 25 degC within the limit stated for it
# description: Some makers state a second limit for 25 degC and keep the rest in hand for cold mornings. Where a sheet states the absolute limit alone, that one is taken at 25 degC too and listed as assumed.
# custom:
#   grade: fix
#   each: pv_inputs
#   source: maker's data sheet
#   remedy: take panels out of series
package codebooks.limits.voltage_at_25

check contains {"about": i.id, "is": i.voc_stc, "at_most": i.controller.pv_voltage_max_25} if some i in input.pv_inputs
