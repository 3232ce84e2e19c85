# METADATA
# title: The sun covers the loads in the worst month
# description: A year's yield says nothing about December. Where no weather file is named the sky is taken as clear, and only a share of it is counted on.
# custom:
#   grade: fix
#   each: system
#   source: conservation of energy; the share of a clear sky that a dull month leaves is common practice, from memory
#   remedy: take loads away in that month, tilt the array up, add panels, or count on another source; name a weather file to know better
package codebooks.practice.winter_balance

check contains {
	"about": s.id, "when": fact.more_than(s.daily_load, fact.number(0, "Wh")), "otherwise": "nothing takes energy from the banks",
	"is": given(s), "at_least": fact.either(s.backed, input.params.winter_cover_least_backed, input.params.winter_cover_least),
	"also": [s.worst_month],
} if s := input.system

# A clear sky is the most that the site can give: only a share of it counts.
given(s) := fact.either(
	fact.one_of(input.site.sky, ["weather year"]),
	s.worst_month_cover,
	fact.times([input.params.winter_light, s.worst_month_cover]),
)
