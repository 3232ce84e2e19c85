# METADATA
# title: Equipment grounding conductors of PV circuits are large enough
# description: "It must carry a fault until the device ahead opens: by the device's rating, or where there is none by the rating that one would have; never larger than the circuit's own conductors, never smaller than 14 AWG. It need not grow where a circuit is made larger for its voltage drop. Copper is taken."
# custom:
#   grade: fix
#   each: cable_runs
#   source: NEC 2023 690.45, 690.43, 250.122, 690.9(B), Table 250.122
#   cites: [nec_2023]
#   remedy: lead a larger grounding conductor with the circuit
#   equivalent:
#     - mutant: "without count(r.protections) > 0"
#       reason: "without a device there is no r.protections[0]: this definition has no value then, and the other holds"
package codebooks.us_2023.grounding_conductor

import data.codebooks.us_2023.shared

check contains {
	"about": r.id, "when": fact.all([shared.on_land(input.site), fact.at_least(fact.number(800, "A"), device(r))]), "otherwise": "beyond the 800 A of the table, or not under this code",
	"is": fact.times([1.005, r.grounding_size]), "at_least": fact.smallest([fact.lookup("grounding_250_122", [device(r)]), fact.times([r.area, r.per_pole])]),
} if {
	some r in input.cable_runs
	shared.on_pv(r)
}

check contains {"about": r.id, "does_not_apply": "not in a PV circuit"} if {
	some r in input.cable_runs
	not shared.on_pv(r)
}

device(r) := r.protections[0].rating if count(r.protections) > 0

device(r) := shared.continuous_current(r) if count(r.protections) == 0
