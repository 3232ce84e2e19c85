# METADATA
# title: Power circuits are of 1.5 mm2 or more
# description: Thinner conductors break where they are bent and clamped, whatever current they carry.
# custom:
#   grade: fix
#   each: cable_runs
#   source: IEC 60364-5-52 524, Table 52.2 (from memory)
#   cites: [iec_60364_5_52_memory]
#   remedy: use 1.5 mm2 of copper at least
package codebooks.iec.smallest_conductor

check contains {"about": r.id, "is": r.area, "at_least": fact.number(1.5, "mm2")} if some r in input.cable_runs
