package codebooks.iec.residual_current_test

import data.codebooks.iec.residual_current

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly 30 mA": {"design": "meets", "facts": {}, "about": "ac_output.cabin", "which": "sensitivity", "verdict": "meets"},
	"a step inside": {"design": "meets", "facts": {"ac_output.cabin.declared.iec.residual_current": "29.8 mA"}, "about": "ac_output.cabin", "which": "sensitivity", "verdict": "meets"},
	"a step beyond": {"design": "meets", "facts": {"ac_output.cabin.declared.iec.residual_current": "30.2 mA"}, "about": "ac_output.cabin", "which": "sensitivity", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"ac_output.cabin.declared.iec.residual_current": null}, "about": "ac_output.cabin", "which": "sensitivity", "verdict": "unproven"},
	"none, and no figure": {"design": "meets", "facts": {"ac_output.cabin.declared.iec.residual_type": "none", "ac_output.cabin.declared.iec.residual_current": null}, "about": "ac_output.cabin", "which": "sensitivity", "verdict": "does_not_apply"},
	"type silent: sensitivity": {"design": "meets", "facts": {"ac_output.cabin.declared.iec.residual_type": null}, "about": "ac_output.cabin", "which": "sensitivity", "verdict": "unproven"},
	"type A on an inverter that separates": {"design": "meets", "facts": {}, "about": "ac_output.cabin", "which": "type", "verdict": "meets"},
	"type F": {"design": "meets", "facts": {"ac_output.cabin.declared.iec.residual_type": "F"}, "about": "ac_output.cabin", "which": "type", "verdict": "meets"},
	"type AC": {"design": "meets", "facts": {"ac_output.cabin.declared.iec.residual_type": "AC"}, "about": "ac_output.cabin", "which": "type", "verdict": "breaks"},
	"none": {"design": "meets", "facts": {"ac_output.cabin.declared.iec.residual_type": "none"}, "about": "ac_output.cabin", "which": "type", "verdict": "breaks"},
	"type A without separation": {"design": "meets", "facts": {"inverter.sedge-1500.isolated": false}, "about": "ac_output.cabin", "which": "type", "verdict": "breaks"},
	"type F without separation": {"design": "meets", "facts": {"ac_output.cabin.declared.iec.residual_type": "F", "inverter.sedge-1500.isolated": false}, "about": "ac_output.cabin", "which": "type", "verdict": "breaks"},
	"type B without separation": {"design": "meets", "facts": {"ac_output.cabin.declared.iec.residual_type": "B", "inverter.sedge-1500.isolated": false}, "about": "ac_output.cabin", "which": "type", "verdict": "meets"},
	"type B, separation unknown": {"design": "meets", "facts": {"ac_output.cabin.declared.iec.residual_type": "B", "inverter.sedge-1500.isolated": null}, "about": "ac_output.cabin", "which": "type", "verdict": "meets"},
	"type A, separation unknown": {"design": "meets", "facts": {"inverter.sedge-1500.isolated": null}, "about": "ac_output.cabin", "which": "type", "verdict": "unproven"},
	"type AC, separation unknown": {"design": "meets", "facts": {"ac_output.cabin.declared.iec.residual_type": "AC", "inverter.sedge-1500.isolated": null}, "about": "ac_output.cabin", "which": "type", "verdict": "breaks"},
	"type silent": {"design": "meets", "facts": {"ac_output.cabin.declared.iec.residual_type": null}, "about": "ac_output.cabin", "which": "type", "verdict": "unproven"},
	"0 A, so none": {"design": "meets", "facts": {"ac_output.cabin.declared.iec.residual_current": "0 A"}, "about": "ac_output.cabin", "which": "sensitivity", "verdict": "breaks"},
	"5 mA, the most sensitive that is made": {"design": "meets", "facts": {"ac_output.cabin.declared.iec.residual_current": "5 mA"}, "about": "ac_output.cabin", "which": "sensitivity", "verdict": "meets"},
	"less than is made": {"design": "meets", "facts": {"ac_output.cabin.declared.iec.residual_current": "4.97 mA"}, "about": "ac_output.cabin", "which": "sensitivity", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, residual_current.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
