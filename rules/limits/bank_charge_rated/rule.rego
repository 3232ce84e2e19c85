# METADATA
# title: Bank accepts its sources even where a current setting is lost
# description: A setting can be lost with an update, a reset or an exchanged controller. The controller then gives its rated current.
# custom:
#   grade: advise
#   each: banks
#   source: common practice
#   remedy: lock and record the settings, or choose a smaller controller
package codebooks.limits.bank_charge_rated

check contains {"about": b.id, "is": b.charge_current_rated, "at_most": b.charge_current_accepted} if some b in input.banks
