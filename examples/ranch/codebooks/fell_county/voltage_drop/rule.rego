# METADATA
# title: Voltage drop along a path within the county's limit
# description: The code only informs of 3 % and 5 %. The county makes a limit of it, and a stricter one.
# custom:
#   grade: fix
#   each: cable_runs
#   source: county amendment to NEC 2023 210.19
#   cites: [ordinance]
#   remedy: use larger or shorter conductors, or a higher voltage
package codebooks.fell_county.voltage_drop

check contains {"about": r.id, "is": r.path_drop, "at_most": input.params.voltage_drop_max} if some r in input.cable_runs
