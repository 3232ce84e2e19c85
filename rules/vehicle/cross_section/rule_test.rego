package codebooks.vehicle.cross_section_test

import data.codebooks.vehicle.cross_section

# Published worked examples: 6 mm2, 5 m each way, 0.8 V: 24 A. 60 A, 5 m each way, 0.2 V: 60 mm2. A third, 2.5 mm2,
# 15 m and 6.5 A, holds only where 15 m is the whole loop.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"6 mm2, 5 m each way: 24.1 A": {"design": "meets", "facts": {"cable_run.load.lights.size": "6 mm2", "cable_run.load.lights.length": "5 m", "cable_run.load.lights.current": "24.13 A"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"6 mm2, 5 m each way: 24.14 A": {"design": "meets", "facts": {"cable_run.load.lights.size": "6 mm2", "cable_run.load.lights.length": "5 m", "cable_run.load.lights.current": "24.14 A"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"charging line, 60 A, 5 m each way: 59.67 mm2": {"design": "meets", "facts": {"cable_run.charge_source.engine.size": "59.68 mm2", "cable_run.charge_source.engine.length": "5 m", "cable_run.charge_source.engine.current": "60 A"}, "about": "cable_run.charge_source.engine", "verdict": "meets"},
	"charging line, 60 A, 5 m each way: a step thinner": {"design": "meets", "facts": {"cable_run.charge_source.engine.size": "59.66 mm2", "cable_run.charge_source.engine.length": "5 m", "cable_run.charge_source.engine.current": "60 A"}, "about": "cable_run.charge_source.engine", "verdict": "breaks"},
	"2.5 mm2, a loop of 15 m: 6.7 A": {"design": "meets", "facts": {"cable_run.load.lights.length": "7.5 m", "cable_run.load.lights.current": "6.7 A"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"2.5 mm2, 15 m each way: 6.5 A": {"design": "meets", "facts": {"cable_run.load.lights.length": "15 m", "cable_run.load.lights.current": "6.5 A"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"over the chassis": {"design": "meets", "facts": {"cable_run.load.lights.declared.vehicle.chassis_return": true}, "about": "cable_run.load.lights", "verdict": "does_not_apply"},
	"the bank's": {"design": "meets", "facts": {}, "about": "cable_run.bank.house", "verdict": "does_not_apply"},
	"unknown cable_run.load.lights.length": {"design": "meets", "facts": {"cable_run.load.lights.length": null}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"unknown load.lights.power": {"design": "meets", "facts": {"load.lights.power": null}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"unknown cable_run.load.lights.declared.vehicle.chassis_return": {"design": "meets", "facts": {"cable_run.load.lights.declared.vehicle.chassis_return": null}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"not a vehicle": {"design": "meets", "facts": {"site.place": "building"}, "about": "cable_run.load.lights", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"another standard": {"design": "meets", "facts": {"site.declared.vehicle.standard": "rvia_lv"}, "about": "cable_run.load.lights", "verdict": "does_not_apply"},
	"standard silent": {"design": "meets", "facts": {"site.declared.vehicle.standard": null}, "about": "cable_run.load.lights", "verdict": "unproven"},
	"a load on the AC side": {"design": "meets", "facts": {}, "about": "cable_run.load.pump", "verdict": "does_not_apply"},
	"charging line: not a vehicle": {"design": "meets", "facts": {"site.place": "building"}, "about": "cable_run.charge_source.engine", "verdict": "does_not_apply"},
	"charging line: another standard": {"design": "meets", "facts": {"site.declared.vehicle.standard": "rvia_lv"}, "about": "cable_run.charge_source.engine", "verdict": "does_not_apply"},
	"charging line: over the chassis": {"design": "meets", "facts": {"cable_run.charge_source.engine.declared.vehicle.chassis_return": true}, "about": "cable_run.charge_source.engine", "verdict": "does_not_apply"},
	"area of 5.9 mm2, 5 m each way: 24.13 A": {"design": "meets", "facts": {"cable_run.load.lights.size": "10 mm2", "cable_run.load.lights.area": "5.9 mm2", "cable_run.load.lights.length": "5 m", "cable_run.load.lights.current": "24.13 A"}, "about": "cable_run.load.lights", "verdict": "breaks"},
	"two of 3 mm2 for each pole, 5 m each way: 24.13 A": {"design": "meets", "facts": {"cable_run.load.lights.size": "3 mm2", "cable_run.load.lights.per_pole": 2, "cable_run.load.lights.length": "5 m", "cable_run.load.lights.current": "24.13 A"}, "about": "cable_run.load.lights", "verdict": "meets"},
	"charging line, area of 59.66 mm2, 60 A, 5 m each way": {"design": "meets", "facts": {"cable_run.charge_source.engine.size": "70 mm2", "cable_run.charge_source.engine.area": "59.66 mm2", "cable_run.charge_source.engine.length": "5 m", "cable_run.charge_source.engine.current": "60 A"}, "about": "cable_run.charge_source.engine", "verdict": "breaks"},
	"charging line, two of 29.84 mm2 for each pole, 60 A, 5 m each way": {"design": "meets", "facts": {"cable_run.charge_source.engine.size": "29.84 mm2", "cable_run.charge_source.engine.per_pole": 2, "cable_run.charge_source.engine.length": "5 m", "cable_run.charge_source.engine.current": "60 A"}, "about": "cable_run.charge_source.engine", "verdict": "meets"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, cross_section.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
