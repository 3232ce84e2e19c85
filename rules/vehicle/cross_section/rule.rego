# METADATA
# title: Cross-section as the drop demands
# description: Each conductor is as thick as its own drop demands, out and back, warm as it is in service.
# custom:
#   grade: fix
#   each: cable_runs
#   source: "EN 1648 cross-section: A = 0.01989 x L x I / drop, L out and back, 0.8 V to appliances and 0.2 V of the charging line"
#   cites: [en_1648]
#   remedy: use a thicker or shorter cable
package codebooks.vehicle.cross_section

import data.codebooks.vehicle.shared

check contains {
	"about": r.id, "when": two_wires(r), "otherwise": "not built by EN 1648, or the chassis is its second conductor",
	"is": fact.times([r.area, r.per_pole]), "at_least": demanded(r, input.params.drop_volts),
} if {
	some r in input.cable_runs
	some l in r.loads
	count(l.ac_outputs) == 0
}

check contains {
	"about": r.id, "when": two_wires(r), "otherwise": "not built by EN 1648, or the chassis is its second conductor",
	"is": fact.times([r.area, r.per_pole]), "at_least": demanded(r, input.params.charge_drop_volts),
} if {
	some r in input.cable_runs
	count(r.charge_sources) > 0
}

check contains {"about": r.id, "does_not_apply": "it feeds no appliance by direct current, and is no charging line of the vehicle"} if {
	some r in input.cable_runs
	not judged(r)
}

judged(r) if count(r.charge_sources) > 0

judged(r) if {
	some l in r.loads
	count(l.ac_outputs) == 0
}

two_wires(r) := fact.all([shared.by_en_1648(input.site), fact.no(r.declared.chassis_return)])

# 0.01989 ohm mm2/m is copper at 50 degC.
demanded(r, drop) := fact.times([
	fact.number(0.01989, "mm2"), 2,
	fact.ratio(r.length, fact.number(1, "m")), fact.ratio(r.current, fact.number(1, "A")), fact.ratio(fact.number(1, "V"), drop),
])
