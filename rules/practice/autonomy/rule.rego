# METADATA
# title: Enough days without sun
# description: A bank that is empty after one dark day is deeply discharged often, and dies young. The month that takes most decides.
# custom:
#   grade: advise
#   each: banks
#   source: common practice
#   remedy: add batteries, or take loads away
package codebooks.practice.autonomy

check contains {"about": b.id, "is": b.autonomy_heaviest, "at_least": input.params.autonomy_min} if some b in input.banks
