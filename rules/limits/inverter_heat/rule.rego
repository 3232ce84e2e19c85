# METADATA
# title: Inverter gives full power at the site's hottest
# description: Above its rated air temperature an inverter gives less, or switches off. Indoors it is rarely cooler than outside.
# custom:
#   grade: advise
#   each: ac_outputs
#   source: maker's data sheet
#   remedy: give it cooler air, or a size in reserve
package codebooks.limits.inverter_heat

check contains {"about": o.id, "is": input.site.hottest, "at_most": o.inverter.full_power_to} if some o in input.ac_outputs
