package codebooks.marine.battery_mounting_test

import data.codebooks.marine.battery_mounting

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"restrained: yes": {"design": "meets", "facts": {}, "about": "bank.house", "which": "restrained", "verdict": "meets"},
	"restrained: no": {"design": "meets", "facts": {"bank.house.declared.marine.restrained": false}, "about": "bank.house", "which": "restrained", "verdict": "breaks"},
	"restrained: silent": {"design": "meets", "facts": {"bank.house.declared.marine.restrained": null}, "about": "bank.house", "which": "restrained", "verdict": "unproven"},
	"not a boat (restrained)": {"design": "meets", "facts": {"site.place": "building"}, "about": "bank.house", "which": "restrained", "verdict": "does_not_apply"},
	"place unknown (restrained)": {"design": "meets", "facts": {"site.place": null}, "about": "bank.house", "which": "restrained", "verdict": "unproven"},
	"terminals: yes": {"design": "meets", "facts": {}, "about": "bank.house", "which": "terminals", "verdict": "meets"},
	"terminals: no": {"design": "meets", "facts": {"bank.house.declared.marine.terminals_covered": false}, "about": "bank.house", "which": "terminals", "verdict": "breaks"},
	"terminals: silent": {"design": "meets", "facts": {"bank.house.declared.marine.terminals_covered": null}, "about": "bank.house", "which": "terminals", "verdict": "unproven"},
	"not a boat (terminals)": {"design": "meets", "facts": {"site.place": "building"}, "about": "bank.house", "which": "terminals", "verdict": "does_not_apply"},
	"place unknown (terminals)": {"design": "meets", "facts": {"site.place": null}, "about": "bank.house", "which": "terminals", "verdict": "unproven"},
	"fuel: yes": {"design": "meets", "facts": {}, "about": "bank.house", "which": "fuel", "verdict": "meets"},
	"fuel: no": {"design": "meets", "facts": {"bank.house.declared.marine.clear_of_fuel": false}, "about": "bank.house", "which": "fuel", "verdict": "breaks"},
	"fuel: silent": {"design": "meets", "facts": {"bank.house.declared.marine.clear_of_fuel": null}, "about": "bank.house", "which": "fuel", "verdict": "unproven"},
	"not a boat (fuel)": {"design": "meets", "facts": {"site.place": "building"}, "about": "bank.house", "which": "fuel", "verdict": "does_not_apply"},
	"place unknown (fuel)": {"design": "meets", "facts": {"site.place": null}, "about": "bank.house", "which": "fuel", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, battery_mounting.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
