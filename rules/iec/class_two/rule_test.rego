package codebooks.iec.class_two_test

import data.codebooks.iec.class_two

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"yes": {"design": "meets", "facts": {}, "about": "string.south.a", "verdict": "meets"},
	"no": {"design": "meets", "facts": {"string.south.a.declared.iec.class_two": false}, "about": "string.south.a", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"string.south.a.declared.iec.class_two": null}, "about": "string.south.a", "verdict": "unproven"},
	"exactly 60 V": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "60 V", "string.south.a.declared.iec.class_two": false}, "about": "string.south.a", "verdict": "does_not_apply"},
	"a step above 60 V": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "60.01 V", "string.south.a.declared.iec.class_two": false}, "about": "string.south.a", "verdict": "breaks"},
	"voltage unknown": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": null}, "about": "string.south.a", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, class_two.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
