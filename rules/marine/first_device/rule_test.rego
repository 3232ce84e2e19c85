package codebooks.marine.first_device_test

import data.codebooks.marine.first_device

# Worked: 0.20 m meets ISO and breaks ABYC and 33 CFR unsheathed; 0.175 m meets all; 0.5 m sheathed meets all;
# 1.2 m sheathed from a bus breaks 40 in, from the post it meets 72 in.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"ISO: exactly at the limit": {"design": "meets", "facts": {"protection.bank.house.distance": "0.2 m"}, "about": "protection.bank.house", "verdict": "meets"},
	"ISO: a step inside": {"design": "meets", "facts": {"protection.bank.house.distance": "0.1998 m"}, "about": "protection.bank.house", "verdict": "meets"},
	"ISO: a step beyond": {"design": "meets", "facts": {"protection.bank.house.distance": "0.2002 m"}, "about": "protection.bank.house", "verdict": "breaks"},
	"ISO: unknown": {"design": "meets", "facts": {"protection.bank.house.distance": null}, "about": "protection.bank.house", "verdict": "unproven"},
	"ABYC: exactly at the limit": {"design": "meets", "facts": {"param.marine.standard": "abyc", "protection.bank.house.distance": "0.175 m"}, "about": "protection.bank.house", "verdict": "meets"},
	"ABYC: a step inside": {"design": "meets", "facts": {"param.marine.standard": "abyc", "protection.bank.house.distance": "0.174825 m"}, "about": "protection.bank.house", "verdict": "meets"},
	"ABYC: a step beyond": {"design": "meets", "facts": {"param.marine.standard": "abyc", "protection.bank.house.distance": "0.175175 m"}, "about": "protection.bank.house", "verdict": "breaks"},
	"ABYC: unknown": {"design": "meets", "facts": {"param.marine.standard": "abyc", "protection.bank.house.distance": null}, "about": "protection.bank.house", "verdict": "unproven"},
	"33 CFR: exactly at the limit": {"design": "meets", "facts": {"param.marine.standard": "cfr", "protection.bank.house.distance": "0.1778 m"}, "about": "protection.bank.house", "verdict": "meets"},
	"33 CFR: a step inside": {"design": "meets", "facts": {"param.marine.standard": "cfr", "protection.bank.house.distance": "0.1776222 m"}, "about": "protection.bank.house", "verdict": "meets"},
	"33 CFR: a step beyond": {"design": "meets", "facts": {"param.marine.standard": "cfr", "protection.bank.house.distance": "0.1779778 m"}, "about": "protection.bank.house", "verdict": "breaks"},
	"33 CFR: unknown": {"design": "meets", "facts": {"param.marine.standard": "cfr", "protection.bank.house.distance": null}, "about": "protection.bank.house", "verdict": "unproven"},
	"ABYC, sheathed, from a bus: exactly at the limit": {"design": "meets", "facts": {"param.marine.standard": "abyc", "cable_run.charger.main.sheathed": true, "protection.charger.main.distance": "1.016 m"}, "about": "protection.charger.main", "verdict": "meets"},
	"ABYC, sheathed, from a bus: a step inside": {"design": "meets", "facts": {"param.marine.standard": "abyc", "cable_run.charger.main.sheathed": true, "protection.charger.main.distance": "1.014984 m"}, "about": "protection.charger.main", "verdict": "meets"},
	"ABYC, sheathed, from a bus: a step beyond": {"design": "meets", "facts": {"param.marine.standard": "abyc", "cable_run.charger.main.sheathed": true, "protection.charger.main.distance": "1.017016 m"}, "about": "protection.charger.main", "verdict": "breaks"},
	"ABYC, sheathed, from a bus: unknown": {"design": "meets", "facts": {"param.marine.standard": "abyc", "cable_run.charger.main.sheathed": true, "protection.charger.main.distance": null}, "about": "protection.charger.main", "verdict": "unproven"},
	"ABYC, sheathed, from the post: exactly at the limit": {"design": "meets", "facts": {"param.marine.standard": "abyc", "cable_run.bank.house.sheathed": true, "protection.bank.house.distance": "1.8288 m"}, "about": "protection.bank.house", "verdict": "meets"},
	"ABYC, sheathed, from the post: a step inside": {"design": "meets", "facts": {"param.marine.standard": "abyc", "cable_run.bank.house.sheathed": true, "protection.bank.house.distance": "1.8269712 m"}, "about": "protection.bank.house", "verdict": "meets"},
	"ABYC, sheathed, from the post: a step beyond": {"design": "meets", "facts": {"param.marine.standard": "abyc", "cable_run.bank.house.sheathed": true, "protection.bank.house.distance": "1.8306288 m"}, "about": "protection.bank.house", "verdict": "breaks"},
	"ABYC, sheathed, from the post: unknown": {"design": "meets", "facts": {"param.marine.standard": "abyc", "cable_run.bank.house.sheathed": true, "protection.bank.house.distance": null}, "about": "protection.bank.house", "verdict": "unproven"},
	"0.5 m sheathed, ISO": {"design": "meets", "facts": {"protection.charger.main.distance": "0.5 m", "cable_run.charger.main.sheathed": true}, "about": "protection.charger.main", "verdict": "does_not_apply"},
	"0.5 m sheathed, ABYC": {"design": "meets", "facts": {"protection.charger.main.distance": "0.5 m", "cable_run.charger.main.sheathed": true, "param.marine.standard": "abyc"}, "about": "protection.charger.main", "verdict": "meets"},
	"0.5 m sheathed, 33 CFR": {"design": "meets", "facts": {"protection.charger.main.distance": "0.5 m", "cable_run.charger.main.sheathed": true, "param.marine.standard": "cfr"}, "about": "protection.charger.main", "verdict": "meets"},
	"1.2 m sheathed from a bus": {"design": "meets", "facts": {"protection.charger.main.distance": "1.2 m", "cable_run.charger.main.sheathed": true, "param.marine.standard": "abyc"}, "about": "protection.charger.main", "verdict": "breaks"},
	"1.2 m sheathed from the post": {"design": "meets", "facts": {"protection.bank.house.distance": "1.2 m", "cable_run.bank.house.sheathed": true, "param.marine.standard": "abyc"}, "about": "protection.bank.house", "verdict": "meets"},
	"sheath unknown, within the short limit": {"design": "meets", "facts": {"protection.charger.main.distance": "0.175 m", "cable_run.charger.main.sheathed": null, "param.marine.standard": "abyc"}, "about": "protection.charger.main", "verdict": "meets"},
	"sheath unknown, between": {"design": "meets", "facts": {"protection.charger.main.distance": "0.5 m", "cable_run.charger.main.sheathed": null, "param.marine.standard": "abyc"}, "about": "protection.charger.main", "verdict": "unproven"},
	"sheath unknown, beyond both": {"design": "meets", "facts": {"protection.charger.main.distance": "1.2 m", "cable_run.charger.main.sheathed": null, "param.marine.standard": "abyc"}, "about": "protection.charger.main", "verdict": "breaks"},
	"sheath unknown, ISO": {"design": "meets", "facts": {"protection.charger.main.distance": "0.5 m", "cable_run.charger.main.sheathed": null}, "about": "protection.charger.main", "verdict": "unproven"},
	"between batteries, bare": {"design": "meets", "facts": {"protection.bank.house.each.distance": "0.5 m"}, "about": "protection.bank.house.each", "verdict": "breaks"},
	"PV side": {"design": "meets", "facts": {}, "about": "protection.array.south", "verdict": "does_not_apply"},
	"not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "protection.bank.house", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "protection.bank.house", "verdict": "unproven"},
	"0.2 m sheathed, ISO": {"design": "meets", "facts": {"protection.charger.main.distance": "0.2 m", "cable_run.charger.main.sheathed": true}, "about": "protection.charger.main", "verdict": "meets"},
	"AC side": {"design": "meets", "facts": {}, "about": "protection.load.pump", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, first_device.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
