# METADATA
# title: The code covers what the system stands in
# description: Watercraft other than floating buildings are outside this code, and no rule of it judges them. A codebook that is named and judges nothing would look like a clean result.
# custom:
#   grade: fix
#   each: site
#   source: NEC 2023 90.2
#   cites: [nec_2023_memory]
#   remedy: put the codebook marine in force in its place; a floating building that is moored for good is written as a building
package codebooks.us_2023.scope

check contains {
	"about": input.site.id, "is_true": fact.one_of(input.site.place, ["building", "ground", "vehicle"]), "because": "this code does not cover boats, and judges nothing here",
}
