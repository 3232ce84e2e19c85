# METADATA
# title: Panel frames and metal cases are bonded
# description: A frame that is not bonded stays live after a fault until somebody touches it. Bonding holds for floating systems as well.
# custom:
#   grade: fix
#   each: grounding
#   source: common practice
#   remedy: bond frames, racks and cases together and to ground
package codebooks.limits.frames_bonded

check contains {"about": g.id, "is_true": g.frames_bonded, "because": "frames and cases are not bonded"} if g := input.grounding
