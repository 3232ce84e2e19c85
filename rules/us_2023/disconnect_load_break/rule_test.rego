package codebooks.us_2023.disconnect_load_break_test

import data.codebooks.us_2023.disconnect_load_break

# 690.15: 24 A of Isc are exactly 30 A (the 30 A from memory).

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"isolating, 24 A: exactly 30 A": {"design": "meets", "facts": {"disconnect.array.south.load_break": false, "disconnect.array.south.declared.us_2023.isolating_only": true, "disconnect.array.south.current": "24 A"}, "about": "disconnect.array.south", "verdict": "meets"},
	"isolating, 24.1 A": {"design": "meets", "facts": {"disconnect.array.south.load_break": false, "disconnect.array.south.declared.us_2023.isolating_only": true, "disconnect.array.south.current": "24.1 A"}, "about": "disconnect.array.south", "verdict": "breaks"},
	"not isolating, small": {"design": "meets", "facts": {"disconnect.array.south.load_break": false, "disconnect.array.south.current": "10 A"}, "about": "disconnect.array.south", "verdict": "breaks"},
	"load break settles it": {"design": "meets", "facts": {"disconnect.array.south.declared.us_2023.isolating_only": null}, "about": "disconnect.array.south", "verdict": "meets"},
	"a bank's": {"design": "meets", "facts": {}, "about": "disconnect.bank.house", "verdict": "does_not_apply"},
	"unknown disconnect.array.south.load_break": {"design": "meets", "facts": {"disconnect.array.south.load_break": null}, "about": "disconnect.array.south", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "disconnect.array.south", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, disconnect_load_break.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
