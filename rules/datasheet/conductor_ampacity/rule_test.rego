package codebooks.datasheet.conductor_ampacity_test

import data.codebooks.datasheet.conductor_ampacity

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the most": {"design": "meets", "facts": {"cable_run.bank.house.ampacity": "347 A"}, "about": "cable_run.bank.house", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"cable_run.bank.house.ampacity": "347.1 A"}, "about": "cable_run.bank.house", "verdict": "breaks"},
	"400 A on 70 mm2": {"design": "meets", "facts": {"cable_run.bank.house.ampacity": "400 A"}, "about": "cable_run.bank.house", "verdict": "breaks"},
	"400 A on 70 mm2 that bears 120 degC": {"design": "meets", "facts": {"cable_run.bank.house.ampacity": "400 A", "cable_run.bank.house.insulation": "120 degC"}, "about": "cable_run.bank.house", "verdict": "meets"},
	"exactly at the most for 60 degC": {"design": "meets", "facts": {"cable_run.bank.house.ampacity": "245.3 A", "cable_run.bank.house.insulation": "60 degC"}, "about": "cable_run.bank.house", "verdict": "meets"},
	"a step above for 60 degC": {"design": "meets", "facts": {"cable_run.bank.house.ampacity": "245.5 A", "cable_run.bank.house.insulation": "60 degC"}, "about": "cable_run.bank.house", "verdict": "breaks"},
	"cooler than the table begins": {"design": "meets", "facts": {"cable_run.bank.house.ampacity": "245.3 A", "cable_run.bank.house.insulation": "50 degC"}, "about": "cable_run.bank.house", "verdict": "meets"},
	"cooler than the table begins, a step above": {"design": "meets", "facts": {"cable_run.bank.house.ampacity": "245.5 A", "cable_run.bank.house.insulation": "50 degC"}, "about": "cable_run.bank.house", "verdict": "breaks"},
	"200 degC": {"design": "meets", "facts": {"cable_run.bank.house.ampacity": "584.1 A", "cable_run.bank.house.insulation": "200 degC"}, "about": "cable_run.bank.house", "verdict": "meets"},
	"warmer than the table ends": {"design": "meets", "facts": {"cable_run.bank.house.ampacity": "584.1 A", "cable_run.bank.house.insulation": "250 degC"}, "about": "cable_run.bank.house", "verdict": "meets"},
	"warmer than the table ends, a step above": {"design": "meets", "facts": {"cable_run.bank.house.ampacity": "584.2 A", "cable_run.bank.house.insulation": "250 degC"}, "about": "cable_run.bank.house", "verdict": "breaks"},
	"1.5 mm2": {"design": "meets", "facts": {"cable_run.bank.house.ampacity": "30 A", "cable_run.bank.house.area": "1.5 mm2"}, "about": "cable_run.bank.house", "verdict": "meets"},
	"thinner than the table begins": {"design": "meets", "facts": {"cable_run.bank.house.ampacity": "30 A", "cable_run.bank.house.area": "0.75 mm2"}, "about": "cable_run.bank.house", "verdict": "meets"},
	"thinner than the table begins, a step above": {"design": "meets", "facts": {"cable_run.bank.house.ampacity": "30.1 A", "cable_run.bank.house.area": "0.75 mm2"}, "about": "cable_run.bank.house", "verdict": "breaks"},
	"between two areas": {"design": "meets", "facts": {"cable_run.bank.house.ampacity": "381.5 A", "cable_run.bank.house.area": "82.5 mm2"}, "about": "cable_run.bank.house", "verdict": "meets"},
	"between two areas, a step above": {"design": "meets", "facts": {"cable_run.bank.house.ampacity": "381.6 A", "cable_run.bank.house.area": "82.5 mm2"}, "about": "cable_run.bank.house", "verdict": "breaks"},
	"aluminum": {"design": "meets", "facts": {"cable_run.bank.house.ampacity": "274.1 A", "cable_run.bank.house.material": "Al"}, "about": "cable_run.bank.house", "verdict": "meets"},
	"aluminum, a step above": {"design": "meets", "facts": {"cable_run.bank.house.ampacity": "274.2 A", "cable_run.bank.house.material": "Al"}, "about": "cable_run.bank.house", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"cable_run.bank.house.ampacity": null}, "about": "cable_run.bank.house", "verdict": "unproven"},
	"unknown area": {"design": "meets", "facts": {"cable_run.bank.house.area": null}, "about": "cable_run.bank.house", "verdict": "unproven"},
	"unknown insulation": {"design": "meets", "facts": {"cable_run.bank.house.insulation": null}, "about": "cable_run.bank.house", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, conductor_ampacity.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
