# METADATA
# title: Settings locked against change by hand
# description: A set-point that anybody can turn is sooner or later turned.
# custom:
#   grade: advise
#   each: chargers
#   source: common practice
#   remedy: lock the settings when they are programmed
package codebooks.practice.settings_locked

check contains {"about": c.id, "is_true": c.settings.locked, "because": "the settings are open to anybody"} if some c in input.chargers
