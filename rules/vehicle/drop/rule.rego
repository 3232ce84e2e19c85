# METADATA
# title: Drop to appliances within 0.8 V
# description: What arrives at the appliance must be enough for it, and what arrives at the battery enough to fill it. The standard says it in volts.
# custom:
#   grade: advise
#   each: cable_runs
#   source: "EN 1648 voltage drop: 0.8 V to appliances, 0.2 V of the charging line"
#   cites: [en_1648]
#   remedy: use thicker or shorter cable, or a higher voltage
package codebooks.vehicle.drop

import data.codebooks.vehicle.shared

check contains {
	"about": r.id, "when": two_wires(r), "otherwise": "not built by EN 1648, or the chassis is its second conductor",
	"is": fact.times([r.path_drop, r.voltage_base]), "at_most": input.params.drop_volts,
} if {
	some r in input.cable_runs
	some l in r.loads
	count(l.ac_outputs) == 0
}

check contains {
	"about": r.id, "when": two_wires(r), "otherwise": "not built by EN 1648, or the chassis is its second conductor",
	"is": r.voltage_drop, "at_most": input.params.charge_drop_volts,
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
