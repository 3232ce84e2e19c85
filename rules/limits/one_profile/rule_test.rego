package codebooks.limits.one_profile_test

import data.codebooks.limits.one_profile

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"alike": {"design": "meets", "facts": {}, "about": "bank.house", "which": "absorption", "verdict": "meets"},
	"unlike absorption": {"design": "meets", "facts": {"charger.second.settings.absorption": "28.5 V"}, "about": "bank.house", "which": "absorption", "verdict": "breaks"},
	"unlike float": {"design": "meets", "facts": {"charger.second.settings.float": "26.8 V"}, "about": "bank.house", "which": "float", "verdict": "breaks"},
	"unlike equalizing": {"design": "meets", "facts": {"charger.second.settings.equalize": true}, "about": "bank.house", "which": "equalizing", "verdict": "breaks"},
	"unlike compensation": {"design": "meets", "facts": {"charger.second.settings.temperature_compensation": "-1 mV/K"}, "about": "bank.house", "which": "compensation", "verdict": "breaks"},
	"alike within rounding": {"design": "meets", "facts": {"charger.main.settings.absorption": "28.4 V", "charger.second.settings.absorption": "28400 mV"}, "about": "bank.house", "which": "absorption", "verdict": "meets"},
	"a bank without chargers": {"design": "meets", "facts": {}, "about": "bank.shed", "verdict": "does_not_apply"},
	"unknown charger.second.settings.absorption": {"design": "meets", "facts": {"charger.second.settings.absorption": null}, "about": "bank.house", "which": "absorption", "verdict": "unproven"},
	"unknown charger.second.settings.float": {"design": "meets", "facts": {"charger.second.settings.float": null}, "about": "bank.house", "which": "float", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, one_profile.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# One verdict a setting, and no word that the rule does not apply.
test_verdicts_on_house if {
	system := test.facts("meets")
	verdicts := test.verdicts(system, one_profile.check, {}) with input as system
	count([v | some v in verdicts; v.about == "bank.house"]) == 4
}

# One charger alone has no other to differ from.
test_one_charger if {
	system := test.facts("meets")
	alone := object.union(system, {"chargers": [c | some c in system.chargers; c.id == "charger.main"]})
	verdicts := test.verdicts(alone, one_profile.check, {}) with input as alone
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "bank.house"]
}
