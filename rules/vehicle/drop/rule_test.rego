package codebooks.vehicle.drop_test

import data.codebooks.vehicle.drop

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"charging line: exactly at the limit": {"design": "meets", "facts": {"cable_run.charge_source.engine.voltage_drop": "0.2 V"}, "about": "cable_run.charge_source.engine", "verdict": "meets"},
	"charging line: a step inside": {"design": "meets", "facts": {"cable_run.charge_source.engine.voltage_drop": "0.1998 V"}, "about": "cable_run.charge_source.engine", "verdict": "meets"},
	"charging line: a step beyond": {"design": "meets", "facts": {"cable_run.charge_source.engine.voltage_drop": "0.2002 V"}, "about": "cable_run.charge_source.engine", "verdict": "breaks"},
	"charging line: unknown": {"design": "meets", "facts": {"cable_run.charge_source.engine.voltage_drop": null}, "about": "cable_run.charge_source.engine", "verdict": "unproven"},
	"appliance, 0.8 V of 24 V: exactly at the limit": {"design": "meets", "facts": {"cable_run.load.lights.path_drop": "3.333333333 %"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"appliance, 0.8 V of 24 V: a step inside": {"design": "meets", "facts": {"cable_run.load.lights.path_drop": "3.33 %"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"appliance, 0.8 V of 24 V: a step beyond": {"design": "meets", "facts": {"cable_run.load.lights.path_drop": "3.336666667 %"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"appliance, 0.8 V of 24 V: unknown": {"design": "meets", "facts": {"cable_run.load.lights.path_drop": null}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"over the chassis": {"design": "meets", "facts": {"cable_run.load.lights.declared.vehicle.chassis_return": true}, "about": "cable_run.load.lights", "verdict": "does_not_apply"},
	"the bank's": {"design": "meets", "facts": {}, "about": "cable_run.bank.house", "verdict": "does_not_apply"},
	"not a vehicle": {"design": "meets", "facts": {"site.place": "building"}, "about": "cable_run.load.lights", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"another standard": {"design": "meets", "facts": {"site.declared.vehicle.standard": "rvia_lv"}, "about": "cable_run.load.lights", "verdict": "does_not_apply"},
	"standard silent": {"design": "meets", "facts": {"site.declared.vehicle.standard": null}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"a load on the AC side": {"design": "meets", "facts": {}, "about": "cable_run.load.pump", "verdict": "does_not_apply"},
	"charging line: not a vehicle": {"design": "meets", "facts": {"site.place": "building"}, "about": "cable_run.charge_source.engine", "verdict": "does_not_apply"},
	"charging line: another standard": {"design": "meets", "facts": {"site.declared.vehicle.standard": "rvia_lv"}, "about": "cable_run.charge_source.engine", "verdict": "does_not_apply"},
	"charging line: over the chassis": {"design": "meets", "facts": {"cable_run.charge_source.engine.declared.vehicle.chassis_return": true}, "about": "cable_run.charge_source.engine", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, drop.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
