# METADATA
# title: Bank stands no colder than it may be discharged at
# description: Below its lowest temperature a battery gives little, freezes when it is empty, or is switched off by its own system.
# custom:
#   grade: fix
#   each: banks
#   source: maker's data sheet
#   remedy: move the bank to a warmer place, or insulate and heat it
package codebooks.limits.battery_cold

check contains {"about": b.id, "is": b.coldest, "at_least": b.battery.discharge_above} if some b in input.banks
