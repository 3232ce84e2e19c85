# METADATA
# title: Charge settings are locked from the unqualified
# description: A hand that turns a set-point up can burn a house down. The setting is behind a lock or a passcode of one's own.
# custom:
#   grade: fix
#   each: chargers
#   source: NEC 2023 706.33(A)
#   cites: [nec_2023]
#   remedy: lock the settings, or replace the factory's passcode
package codebooks.us_2023.charge_control

import data.codebooks.us_2023.shared

check contains {
	"about": c.id, "when": shared.premises(input.site), "otherwise": "not under this code",
	"is_true": fact.any([c.settings.locked, c.settings.passcode_changed]), "because": "anybody can change the settings",
} if some c in input.chargers
