# METADATA
# title: Fuses that are live from both sides can be isolated
# description: "Between bank and controller, or bank and engine, both ends of a fuse are live: somebody who pulls it needs a switch first."
# custom:
#   grade: fix
#   each: protections
#   source: NEC 2023 706.31(E), 240.40
#   cites: [nec_2023_memory]
#   remedy: put a switch beside the fuse, or use a breaker
package codebooks.us_2023.fuse_isolation

import data.codebooks.us_2023.shared

check contains {
	"about": p.id, "when": fact.all([shared.premises(input.site), fact.one_of(p.kind, ["fuse"]), p.two_way]), "otherwise": "no fuse, live from one side alone, or not under this code",
	"is_true": fact.any(array.concat([count(switches(p)) > 0], breakers(p))), "because": "no switch isolates it from its two sides",
} if {
	some p in input.protections
	not shared.on_pv(p)
	not shared.in_each(p)
}

check contains {"about": p.id, "does_not_apply": "in a PV circuit, or a link between batteries"} if {
	some p in input.protections
	apart(p)
}

apart(p) if shared.on_pv(p)

apart(p) if shared.in_each(p)

# The switch beside it, or the bank's. A breaker in the bank's main serves too.
switches(p) := array.concat(p.disconnects, [d | some b in banks(p); some d in b.disconnects])

banks(p) := array.flatten([p.banks, [x.bank | some x in array.flatten([p.chargers, p.ac_outputs, p.charge_sources])]])

breakers(p) := [fact.one_of(m.kind, ["breaker"]) | some b in banks(p); some m in b.protections; not shared.in_each(m)]
