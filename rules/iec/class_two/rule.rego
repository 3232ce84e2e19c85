# METADATA
# title: Double insulation on the PV side above 60 V
# description: An array cannot be switched off while there is light. Above the band that may be touched its cables and boxes have double or reinforced insulation, so that one failure hurts nobody and starts no arc to earth.
# custom:
#   grade: fix
#   each: strings
#   source: IEC 62548-1 6.2 (from memory), voltage bands of IEC 62109-1 (DVC-A up to 60 V, from memory)
#   cites: [iec_62548_1_memory, iec_60364_4_41]
#   remedy: use cable for photovoltaic systems and boxes of class II, and say so
package codebooks.iec.class_two

check contains {
	"about": s.id, "when": fact.more_than(s.pv_input.voc_cold, fact.number(60, "V")), "otherwise": "up to 60 V, which may be touched",
	"is_true": s.declared.class_two, "because": "its insulation is basic only",
} if some s in input.strings
