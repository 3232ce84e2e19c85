# METADATA
# title: The design is judged at the county's coldest morning, or a colder one
# description: "Valleys of this county are colder than the nearest weather station. Section 690.7 takes the lowest expected temperature; the county says which that is at least, and us_2023 judges the voltage at it."
# custom:
#   grade: stop
#   each: site
#   source: county amendment to NEC 2023 690.7
#   cites: [ordinance]
#   remedy: write the county's figure, or a colder one, as the site's coldest
package codebooks.fell_county.design_cold

check contains {"about": input.site.id, "is": input.site.coldest, "at_most": input.params.design_cold} if count(input.arrays) > 0

check contains {"about": input.site.id, "does_not_apply": "there is no array"} if count(input.arrays) == 0
