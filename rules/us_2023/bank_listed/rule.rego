# METADATA
# title: Storage above 1 kWh is listed
# description: A listed system has been burned on purpose. Loose batteries and their management are listed too, lead batteries excepted. Whether a bank that is put together on site falls under article 706 or 480 is disputed; both ask this.
# custom:
#   grade: fix
#   each: banks
#   source: NEC 2023 706.5, 480.3
#   cites: [nec_2023]
#   remedy: use listed batteries and management, or a listed system
package codebooks.us_2023.bank_listed

import data.codebooks.us_2023.shared

check contains {
	"about": b.id, "when": fact.all([shared.premises(input.site), fact.more_than(b.energy, fact.number(1, "kWh")), fact.no(fact.one_of(b.battery.chemistry, ["flooded", "agm", "gel"]))]),
	"otherwise": "not above 1 kWh, lead, or not under this code",
	"is_true": b.declared.listed, "because": "the batteries are not listed",
} if some b in input.banks
