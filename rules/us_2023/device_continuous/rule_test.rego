package codebooks.us_2023.device_continuous_test

import data.codebooks.us_2023.device_continuous

# Check values B1 and B3 (public transcription; published study note): 11.2 A give 17.5 A and a 20 A
# fuse; the largest Isc for a 20 A fuse is 12.80 A.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"string, 20 A fuse: 1.5625 x 12.8 A: exactly at the limit": {"design": "meets", "facts": {"protection.string.south.a.continuous_rated": false, "protection.string.south.a.current": "12.8 A"}, "about": "protection.string.south.a", "verdict": "meets"},
	"string, 20 A fuse: 1.5625 x 12.8 A: a step below": {"design": "meets", "facts": {"protection.string.south.a.continuous_rated": false, "protection.string.south.a.current": "12.79872 A"}, "about": "protection.string.south.a", "verdict": "meets"},
	"string, 20 A fuse: 1.5625 x 12.8 A: a step above": {"design": "meets", "facts": {"protection.string.south.a.continuous_rated": false, "protection.string.south.a.current": "12.80128 A"}, "about": "protection.string.south.a", "verdict": "breaks"},
	"array, 50 A breaker: 1.5625 x 32 A: exactly at the limit": {"design": "meets", "facts": {"protection.array.south.continuous_rated": false, "protection.array.south.current": "32 A"}, "about": "protection.array.south", "verdict": "meets"},
	"array, 50 A breaker: 1.5625 x 32 A: a step below": {"design": "meets", "facts": {"protection.array.south.continuous_rated": false, "protection.array.south.current": "31.9968 A"}, "about": "protection.array.south", "verdict": "meets"},
	"array, 50 A breaker: 1.5625 x 32 A: a step above": {"design": "meets", "facts": {"protection.array.south.continuous_rated": false, "protection.array.south.current": "32.0032 A"}, "about": "protection.array.south", "verdict": "breaks"},
	"charger, 80 A breaker: 1.25 x 64 A: exactly at the limit": {"design": "meets", "facts": {"protection.charger.main.continuous_rated": false, "protection.charger.main.current": "64 A"}, "about": "protection.charger.main", "verdict": "meets"},
	"charger, 80 A breaker: 1.25 x 64 A: a step below": {"design": "meets", "facts": {"protection.charger.main.continuous_rated": false, "protection.charger.main.current": "63.9936 A"}, "about": "protection.charger.main", "verdict": "meets"},
	"charger, 80 A breaker: 1.25 x 64 A: a step above": {"design": "meets", "facts": {"protection.charger.main.continuous_rated": false, "protection.charger.main.current": "64.0064 A"}, "about": "protection.charger.main", "verdict": "breaks"},
	"string of 11.2 A: 17.5 A, next standard size 20 A": {"design": "meets", "facts": {"protection.string.south.a.current": "11.2 A"}, "about": "protection.string.south.a", "verdict": "meets"},
	"string of 11.2 A, 15 A fuse": {"design": "meets", "facts": {"protection.string.south.a.current": "11.2 A", "protection.string.south.a.rating": "15 A", "protection.string.south.a.continuous_rated": false}, "about": "protection.string.south.a", "verdict": "breaks"},
	"string of 13.9 A: 21.7 A, 20 A fuse": {"design": "meets", "facts": {"protection.string.south.a.current": "13.9 A", "protection.string.south.a.continuous_rated": false}, "about": "protection.string.south.a", "verdict": "breaks"},
	"listed for 100 %: 1.25 x 16 A = 20 A": {"design": "meets", "facts": {"protection.string.south.a.current": "16 A", "protection.string.south.a.continuous_rated": true}, "about": "protection.string.south.a", "verdict": "meets"},
	"listed for 100 %, a step above": {"design": "meets", "facts": {"protection.string.south.a.current": "16.01 A", "protection.string.south.a.continuous_rated": true}, "about": "protection.string.south.a", "verdict": "breaks"},
	"too little for hours, and whether it is so listed unknown": {"design": "meets", "facts": {"protection.string.south.a.current": "13.9 A"}, "about": "protection.string.south.a", "verdict": "unproven"},
	"inverter of 133.7 A: 167.1 A, 175 A device": {"design": "meets", "facts": {"protection.ac_output.shop.current": "133.69 A", "protection.ac_output.shop.rating": "175 A"}, "about": "protection.ac_output.shop", "verdict": "meets"},
	"inverter of 133.7 A, 150 A device": {"design": "meets", "facts": {"protection.ac_output.shop.current": "133.69 A", "protection.ac_output.shop.rating": "150 A", "protection.ac_output.shop.continuous_rated": false}, "about": "protection.ac_output.shop", "verdict": "breaks"},
	"each battery's": {"design": "meets", "facts": {}, "about": "protection.bank.house.each", "verdict": "meets"},
	"unknown protection.charger.main.rating": {"design": "meets", "facts": {"protection.charger.main.rating": null}, "about": "protection.charger.main", "verdict": "unproven"},
	"unknown panel.sage-330.isc": {"design": "meets", "facts": {"panel.sage-330.isc": null}, "about": "protection.string.south.a", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "protection.charger.main", "verdict": "does_not_apply"},
	"on a boat, protection.string.south.a": {"design": "meets", "facts": {"site.place": "boat"}, "about": "protection.string.south.a", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, device_continuous.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
