# METADATA
# title: Bank stands no hotter than it may be charged at
# description: "Heat ages every chemistry, and above its charging temperature a battery must not be charged at all: in summer the system then stops at noon."
# custom:
#   grade: fix
#   each: banks
#   source: maker's data sheet
#   remedy: move the bank to a cooler place, or ventilate it
package codebooks.limits.battery_heat

check contains {"about": b.id, "is": b.hottest, "at_most": b.battery.charge_below} if some b in input.banks
