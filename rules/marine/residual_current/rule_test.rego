package codebooks.marine.residual_current_test

import data.codebooks.marine.residual_current

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly 30 mA": {"design": "meets", "facts": {}, "about": "ac_output.cabin", "verdict": "meets"},
	"a step inside": {"design": "meets", "facts": {"ac_output.cabin.declared.marine.residual_current": "29.8 mA"}, "about": "ac_output.cabin", "verdict": "meets"},
	"a step beyond": {"design": "meets", "facts": {"ac_output.cabin.declared.marine.residual_current": "30.2 mA"}, "about": "ac_output.cabin", "verdict": "breaks"},
	"none, so no figure": {"design": "meets", "facts": {"ac_output.cabin.declared.marine.residual_current": null}, "about": "ac_output.cabin", "verdict": "unproven"},
	"not a boat": {"design": "meets", "facts": {"site.place": "building"}, "about": "ac_output.cabin", "verdict": "does_not_apply"},
	"place unknown": {"design": "meets", "facts": {"site.place": null}, "about": "ac_output.cabin", "verdict": "unproven"},
	"0 A, so none": {"design": "meets", "facts": {"ac_output.cabin.declared.marine.residual_current": "0 A"}, "about": "ac_output.cabin", "verdict": "breaks"},
	"5 mA, the most sensitive that is made": {"design": "meets", "facts": {"ac_output.cabin.declared.marine.residual_current": "5 mA"}, "about": "ac_output.cabin", "verdict": "meets"},
	"less than is made": {"design": "meets", "facts": {"ac_output.cabin.declared.marine.residual_current": "4.97 mA"}, "about": "ac_output.cabin", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, residual_current.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
