# METADATA
# title: Voltage drop along a path within what the workshop allows
# description: Volts lost in cable do not charge, and at 12 V a little resistance costs much. String and array count together, and so do a branch and the main.
# custom:
#   grade: advise
#   each: cable_runs
#   source: common practice
#   remedy: use thicker or shorter cable, or a higher voltage
package codebooks.practice.voltage_drop

check contains {"about": r.id, "is": r.path_drop, "at_most": input.params.voltage_drop_max} if some r in input.cable_runs
