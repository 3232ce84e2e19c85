# METADATA
# title: Array voltage at 25 degC within the limit stated for it
# description: "Some makers state a second limit for 25 degC and keep the rest in hand for cold mornings. Where a sheet has one limit only it is the absolute one: write it for both."
# custom:
#   grade: fix
#   each: pv_inputs
#   source: maker's data sheet
#   remedy: take panels out of series; where the maker states one limit only, give that as pv_voltage_max_25 too
package codebooks.limits.voltage_at_25

check contains {"about": i.id, "is": i.voc_stc, "at_most": i.controller.pv_voltage_max_25} if some i in input.pv_inputs
