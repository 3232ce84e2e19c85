# METADATA
# title: Controller gives its rated current in the air around it
# description: Most controllers give full output up to about 40 degC around them and less above. A closed box in summer is hotter than the weather.
# custom:
#   grade: advise
#   each: chargers
#   source: maker's data sheet
#   remedy: give it cooler air, or a size in reserve
package codebooks.limits.controller_heat

check contains {"about": c.id, "is": c.hottest, "at_most": c.controller.full_power_to} if some c in input.chargers
