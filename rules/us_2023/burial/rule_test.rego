package codebooks.us_2023.burial_test

import data.codebooks.us_2023.burial

# Table 300.5, from memory.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"in plastic, 18 in: exactly at the limit": {"design": "meets", "facts": {"cable_run.array.south.declared.us_2023.raceway": "nonmetallic", "cable_run.array.south.declared.us_2023.depth": "0.4572 m"}, "about": "cable_run.array.south", "verdict": "meets"},
	"in plastic, 18 in: a step below": {"design": "meets", "facts": {"cable_run.array.south.declared.us_2023.raceway": "nonmetallic", "cable_run.array.south.declared.us_2023.depth": "0.45715428 m"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"in plastic, 18 in: a step above": {"design": "meets", "facts": {"cable_run.array.south.declared.us_2023.raceway": "nonmetallic", "cable_run.array.south.declared.us_2023.depth": "0.45724572 m"}, "about": "cable_run.array.south", "verdict": "meets"},
	"in metal, 6 in: exactly at the limit": {"design": "meets", "facts": {"cable_run.array.south.declared.us_2023.depth": "0.1524 m"}, "about": "cable_run.array.south", "verdict": "meets"},
	"in metal, 6 in: a step below": {"design": "meets", "facts": {"cable_run.array.south.declared.us_2023.depth": "0.15238476 m"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"in metal, 6 in: a step above": {"design": "meets", "facts": {"cable_run.array.south.declared.us_2023.depth": "0.15241524 m"}, "about": "cable_run.array.south", "verdict": "meets"},
	"in the earth, 24 in: exactly at the limit": {"design": "meets", "facts": {"cable_run.array.south.method": "direct_buried", "cable_run.array.south.declared.us_2023.depth": "0.6096 m"}, "about": "cable_run.array.south", "verdict": "meets"},
	"in the earth, 24 in: a step below": {"design": "meets", "facts": {"cable_run.array.south.method": "direct_buried", "cable_run.array.south.declared.us_2023.depth": "0.60953904 m"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"in the earth, 24 in: a step above": {"design": "meets", "facts": {"cable_run.array.south.method": "direct_buried", "cable_run.array.south.declared.us_2023.depth": "0.60966096 m"}, "about": "cable_run.array.south", "verdict": "meets"},
	"in the earth whatever encloses it": {"design": "meets", "facts": {"cable_run.array.south.method": "direct_buried", "cable_run.array.south.declared.us_2023.depth": "0.2 m"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"in the earth in plastic": {"design": "meets", "facts": {"cable_run.array.south.method": "direct_buried", "cable_run.array.south.declared.us_2023.raceway": "nonmetallic", "cable_run.array.south.declared.us_2023.depth": "0.5 m"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"a cable in metal cladding counts as one in the earth": {"design": "meets", "facts": {"cable_run.array.south.declared.us_2023.raceway": "mc_cable", "cable_run.array.south.declared.us_2023.depth": "0.6 m"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"not buried": {"design": "meets", "facts": {}, "about": "cable_run.string.south.a", "verdict": "does_not_apply"},
	"unknown cable_run.array.south.declared.us_2023.depth": {"design": "meets", "facts": {"cable_run.array.south.declared.us_2023.depth": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "cable_run.array.south", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, burial.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
