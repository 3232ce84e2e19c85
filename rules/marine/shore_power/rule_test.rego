package codebooks.marine.shore_power_test

import data.codebooks.marine.shore_power

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"separated": {"design": "meets", "facts": {}, "about": "charge_source.shore", "which": "separation", "verdict": "meets"},
	"not separated": {"design": "meets", "facts": {"charge_source.shore.declared.marine.mains_separated": false}, "about": "charge_source.shore", "which": "separation", "verdict": "breaks"},
	"separation silent": {"design": "meets", "facts": {"charge_source.shore.declared.marine.mains_separated": null}, "about": "charge_source.shore", "which": "separation", "verdict": "unproven"},
	"exactly 30 mA": {"design": "meets", "facts": {}, "about": "charge_source.shore", "which": "residual current", "verdict": "meets"},
	"a step inside": {"design": "meets", "facts": {"charge_source.shore.declared.marine.residual_current": "29.8 mA"}, "about": "charge_source.shore", "which": "residual current", "verdict": "meets"},
	"a step beyond": {"design": "meets", "facts": {"charge_source.shore.declared.marine.residual_current": "30.2 mA"}, "about": "charge_source.shore", "which": "residual current", "verdict": "breaks"},
	"300 mA": {"design": "meets", "facts": {"charge_source.shore.declared.marine.residual_current": "300 mA"}, "about": "charge_source.shore", "which": "residual current", "verdict": "breaks"},
	"no figure": {"design": "meets", "facts": {"charge_source.shore.declared.marine.residual_current": null}, "about": "charge_source.shore", "which": "residual current", "verdict": "unproven"},
	"an alternator (separation)": {"design": "meets", "facts": {}, "about": "charge_source.engine", "which": "separation", "verdict": "does_not_apply"},
	"an alternator (residual current)": {"design": "meets", "facts": {}, "about": "charge_source.engine", "which": "residual current", "verdict": "does_not_apply"},
	"shore power or not (separation)": {"design": "meets", "facts": {"charge_source.shore.declared.marine.shore_power": null}, "about": "charge_source.shore", "which": "separation", "verdict": "unproven"},
	"shore power or not (residual current)": {"design": "meets", "facts": {"charge_source.shore.declared.marine.shore_power": null}, "about": "charge_source.shore", "which": "residual current", "verdict": "unproven"},
	"not a boat (separation)": {"design": "meets", "facts": {"site.place": "building"}, "about": "charge_source.shore", "which": "separation", "verdict": "does_not_apply"},
	"not a boat (residual current)": {"design": "meets", "facts": {"site.place": "building"}, "about": "charge_source.shore", "which": "residual current", "verdict": "does_not_apply"},
	"place unknown (separation)": {"design": "meets", "facts": {"site.place": null}, "about": "charge_source.shore", "which": "separation", "verdict": "unproven"},
	"place unknown (residual current)": {"design": "meets", "facts": {"site.place": null}, "about": "charge_source.shore", "which": "residual current", "verdict": "unproven"},
	"0 A, so none": {"design": "meets", "facts": {"charge_source.shore.declared.marine.residual_current": "0 A"}, "about": "charge_source.shore", "which": "residual current", "verdict": "breaks"},
	"5 mA, the most sensitive that is made": {"design": "meets", "facts": {"charge_source.shore.declared.marine.residual_current": "5 mA"}, "about": "charge_source.shore", "which": "residual current", "verdict": "meets"},
	"less than is made": {"design": "meets", "facts": {"charge_source.shore.declared.marine.residual_current": "4.97 mA"}, "about": "charge_source.shore", "which": "residual current", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, shore_power.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
