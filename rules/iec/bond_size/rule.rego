# METADATA
# title: Bond of the frames thick enough
# description: What bonds the frames carries the current of a fault, and part of a lightning stroke nearby.
# custom:
#   grade: fix
#   each: grounding
#   source: "IEC 62548-1 7.4 (from memory): 6 mm2 of copper, 16 mm2 with a lightning protection system"
#   cites: [iec_62548_1_memory]
#   remedy: bond the frames with 6 mm2 of copper at least
package codebooks.iec.bond_size

check contains {
	"about": "grounding", "when": input.grounding.frames_bonded, "otherwise": "no frame is bonded",
	"is": input.grounding.declared.bond_size, "at_least": input.params.bond_size_min,
}
