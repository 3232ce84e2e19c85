package codebooks.marine.lithium_alarm_test

import data.codebooks.marine.lithium_alarm

# Scope: E-13 from 600 Wh, ISO 23625:2025 above 500 Wh; 12.8 V x 46 Ah = 588.8 Wh lies between.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"yes": {"design": "meets", "facts": {}, "about": "bank.house", "verdict": "meets"},
	"no": {"design": "meets", "facts": {"bank.house.declared.marine.pre_alarm": false}, "about": "bank.house", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"bank.house.declared.marine.pre_alarm": null}, "about": "bank.house", "verdict": "unproven"},
	"588.8 Wh, ISO": {"design": "meets", "facts": {"bank.house.energy": "588.8 Wh", "bank.house.declared.marine.pre_alarm": false}, "about": "bank.house", "verdict": "breaks"},
	"exactly 500 Wh, ISO": {"design": "meets", "facts": {"bank.house.energy": "500 Wh", "bank.house.declared.marine.pre_alarm": false}, "about": "bank.house", "verdict": "does_not_apply"},
	"588.8 Wh, ABYC": {"design": "meets", "facts": {"bank.house.energy": "588.8 Wh", "param.marine.standard": "abyc", "bank.house.declared.marine.pre_alarm": false}, "about": "bank.house", "verdict": "does_not_apply"},
	"exactly 600 Wh, ABYC": {"design": "meets", "facts": {"bank.house.energy": "600 Wh", "param.marine.standard": "abyc", "bank.house.declared.marine.pre_alarm": false}, "about": "bank.house", "verdict": "breaks"},
	"lead": {"design": "meets", "facts": {}, "about": "bank.start", "verdict": "does_not_apply"},
	"unknown battery.peat-100.chemistry": {"design": "meets", "facts": {"battery.peat-100.chemistry": null}, "about": "bank.house", "verdict": "unproven"},
	"not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "bank.house", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "bank.house", "verdict": "unproven"},
	"595 Wh, ABYC": {"design": "meets", "facts": {"bank.house.energy": "595 Wh", "param.marine.standard": "abyc", "bank.house.declared.marine.pre_alarm": false}, "about": "bank.house", "verdict": "does_not_apply"},
	"501 Wh, ISO": {"design": "meets", "facts": {"bank.house.energy": "501 Wh", "bank.house.declared.marine.pre_alarm": false}, "about": "bank.house", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, lithium_alarm.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
