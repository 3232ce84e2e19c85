# METADATA
# title: Bank accepts all its charging sources together
# description: More current than the battery is made for heats and gasses it; more than its management system accepts makes that disconnect, under sun. Sources that may run together add up.
# custom:
#   grade: stop
#   each: banks
#   source: maker's data sheet
#   remedy: lower the chargers' current settings, or put more batteries in parallel
package codebooks.limits.bank_charge

check contains {"about": b.id, "is": b.charge_current_total, "at_most": b.charge_current_accepted} if some b in input.banks
