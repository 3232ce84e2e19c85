package codebooks.marine.battery_switch_test

import data.codebooks.marine.battery_switch

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"disconnect.bank.house.rating": "150 A"}, "about": "bank.house", "which": "rating", "verdict": "meets"},
	"a step inside": {"design": "meets", "facts": {"disconnect.bank.house.rating": "150.15 A"}, "about": "bank.house", "which": "rating", "verdict": "meets"},
	"a step beyond": {"design": "meets", "facts": {"disconnect.bank.house.rating": "149.85 A"}, "about": "bank.house", "which": "rating", "verdict": "breaks"},
	"unknown": {"design": "meets", "facts": {"disconnect.bank.house.rating": null}, "about": "bank.house", "which": "rating", "verdict": "unproven"},
	"there": {"design": "meets", "facts": {}, "about": "bank.house", "which": "there", "verdict": "meets"},
	"none": {"design": "breaks", "facts": {}, "about": "bank.start", "which": "there", "verdict": "breaks"},
	"none, 800 A, ABYC": {"design": "breaks", "facts": {"param.marine.standard": "abyc", "bank.start.declared.marine.cold_cranking": "800 A"}, "about": "bank.start", "which": "there", "verdict": "does_not_apply"},
	"none, 801 A, ABYC": {"design": "breaks", "facts": {"param.marine.standard": "abyc", "bank.start.declared.marine.cold_cranking": "801 A"}, "about": "bank.start", "which": "there", "verdict": "breaks"},
	"none, cranking unknown, ABYC": {"design": "breaks", "facts": {"param.marine.standard": "abyc", "bank.start.declared.marine.cold_cranking": null}, "about": "bank.start", "which": "there", "verdict": "unproven"},
	"not a boat (there)": {"design": "meets", "facts": {"site.place": "building"}, "about": "bank.house", "which": "there", "verdict": "does_not_apply"},
	"place unknown (there)": {"design": "meets", "facts": {"site.place": null}, "about": "bank.house", "which": "there", "verdict": "unproven"},
	"none, lithium, 800 A, ABYC": {"design": "breaks", "facts": {"param.marine.standard": "abyc", "battery.bog-12.chemistry": "lifepo4", "bank.start.declared.marine.cold_cranking": "800 A"}, "about": "bank.start", "which": "there", "verdict": "breaks"},
	"not a boat (rating)": {"design": "meets", "facts": {"site.place": "building"}, "about": "bank.house", "which": "rating", "verdict": "does_not_apply"},
	"place unknown (rating)": {"design": "meets", "facts": {"site.place": null}, "about": "bank.house", "which": "rating", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, battery_switch.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
