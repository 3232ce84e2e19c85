# METADATA
# title: Bank voltage high enough for the power
# description: The same power is half the current at twice the voltage. Two kilowatts at 12 V are 170 to 200 A, which no small cable or fuse likes.
# custom:
#   grade: advise
#   each: ac_outputs
#   source: common practice
#   remedy: choose a higher bank voltage; every limit is then judged anew
package codebooks.practice.system_voltage

check contains {"about": o.id, "is": o.current_operating, "at_most": input.params.inverter_current_max} if some o in input.ac_outputs
