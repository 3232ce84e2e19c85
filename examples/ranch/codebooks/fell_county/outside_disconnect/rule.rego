# METADATA
# title: A disconnect stands outside for arrays on buildings
# description: Volunteer firefighters here have no tool that shows whether an array is live. They want a switch that they can see from the road, besides what the code asks.
# custom:
#   grade: fix
#   each: arrays
#   source: county amendment to NEC 2023 690.13
#   cites: [ordinance]
#   remedy: put a switch rated for direct current outside, and answer outside_disconnect for the array
package codebooks.fell_county.outside_disconnect

check contains {
	"about": a.id, "when": fact.one_of(input.site.place, ["building"]), "otherwise": "not at a building",
	"is_true": a.declared.outside_disconnect, "because": "no disconnect stands outside",
} if some a in input.arrays
