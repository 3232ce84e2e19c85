# METADATA
# title: What safety hangs on has a second bank
# description: A lithium bank may switch off at any moment. Navigation lights and radio want another bank to fall back on.
# custom:
#   grade: advise
#   each: loads
#   source: ABYC E-13 management system (recommended)
#   cites: [abyc_e13]
#   remedy: keep a second bank, of lead or lithium, for what safety hangs on
package codebooks.marine.second_supply

import data.codebooks.marine.shared

check contains {
	"about": l.id, "when": fact.all([shared.boat(input.site), l.declared.critical, shared.lithium(l.bank.battery)]), "otherwise": "not a boat, no safety hangs on it, or a lead bank feeds it",
	"is_true": l.declared.second_source, "because": "no other bank can feed it",
} if some l in input.loads
