# METADATA
# title: Float voltage below absorption
# description: Float holds a full battery for days. It lies below absorption in every chemistry; for gel near 2.25 V a cell.
# custom:
#   grade: fix
#   each: batteries
#   source: maker's data sheet; common practice
#   remedy: compare the part with its data sheet, and correct the value that was copied wrongly
package codebooks.datasheet.battery_float

check contains {"about": b.id, "is": b.float_max, "at_most": b.absorption_max} if some b in input.batteries
