# METADATA
# title: Factory passcode replaced
# description: A controller that is programmed by radio and keeps its factory passcode can be set by anybody who walks past.
# custom:
#   grade: fix
#   each: chargers
#   source: common practice
#   remedy: set a passcode and write it into the system's papers
package codebooks.limits.passcode

check contains {"about": c.id, "is_true": c.settings.passcode_changed, "because": "the factory's passcode is still in use"} if some c in input.chargers
