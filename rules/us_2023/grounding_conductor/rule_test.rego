package codebooks.us_2023.grounding_conductor_test

import data.codebooks.us_2023.grounding_conductor

# Table 250.122 (reprints of the table): between rows the next row, 63 A takes 8 AWG.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"50 A device: 10 AWG": {"design": "meets", "facts": {"cable_run.array.south.grounding_size": "10 AWG"}, "about": "cable_run.array.south", "verdict": "meets"},
	"50 A device: 5.26 mm2, as printed": {"design": "meets", "facts": {"cable_run.array.south.grounding_size": "5.26 mm2"}, "about": "cable_run.array.south", "verdict": "meets"},
	"50 A device: 12 AWG": {"design": "meets", "facts": {"cable_run.array.south.grounding_size": "12 AWG"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"50 A device: 5.2 mm2": {"design": "meets", "facts": {"cable_run.array.south.grounding_size": "5.2 mm2"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"60 A device: 10 AWG": {"design": "meets", "facts": {"protection.array.south.rating": "60 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"63 A device: 10 AWG": {"design": "meets", "facts": {"protection.array.south.rating": "63 A"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"63 A device: 8 AWG": {"design": "meets", "facts": {"protection.array.south.rating": "63 A", "cable_run.array.south.grounding_size": "8 AWG"}, "about": "cable_run.array.south", "verdict": "meets"},
	"two conductors a pole count together": {"design": "meets", "facts": {"cable_run.array.south.size": "12 AWG", "cable_run.array.south.per_pole": 2, "cable_run.array.south.grounding_size": "12 AWG"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"30 A device: 10 AWG": {"design": "meets", "facts": {"protection.array.south.rating": "30 A"}, "about": "cable_run.array.south", "verdict": "meets"},
	"20 A device: 12 AWG": {"design": "meets", "facts": {"protection.array.south.rating": "20 A", "cable_run.array.south.grounding_size": "12 AWG"}, "about": "cable_run.array.south", "verdict": "meets"},
	"15 A device: 14 AWG": {"design": "meets", "facts": {"protection.array.south.rating": "15 A", "cable_run.array.south.grounding_size": "14 AWG"}, "about": "cable_run.array.south", "verdict": "meets"},
	"15 A device: 16 AWG": {"design": "meets", "facts": {"protection.array.south.rating": "15 A", "cable_run.array.south.grounding_size": "16 AWG"}, "about": "cable_run.array.south", "verdict": "breaks"},
	"never larger than the circuit's: 14 AWG": {"design": "meets", "facts": {"protection.array.south.rating": "40 A", "cable_run.array.south.size": "14 AWG", "cable_run.array.south.grounding_size": "14 AWG"}, "about": "cable_run.array.south", "verdict": "meets"},
	"800 A device: 1/0 AWG": {"design": "meets", "facts": {"protection.array.south.rating": "800 A", "cable_run.array.south.size": "250 kcmil", "cable_run.array.south.grounding_size": "1/0 AWG"}, "about": "cable_run.array.south", "verdict": "meets"},
	"beyond the table": {"design": "meets", "facts": {"protection.array.south.rating": "801 A"}, "about": "cable_run.array.south", "verdict": "does_not_apply"},
	"a bank's": {"design": "meets", "facts": {}, "about": "cable_run.bank.house", "verdict": "does_not_apply"},
	"unknown cable_run.array.south.grounding_size": {"design": "meets", "facts": {"cable_run.array.south.grounding_size": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"unknown protection.array.south.rating": {"design": "meets", "facts": {"protection.array.south.rating": null}, "about": "cable_run.array.south", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "cable_run.array.south", "verdict": "does_not_apply"},
	"the area counts, however the size is written": {"design": "meets", "facts": {"protection.array.south.rating": "40 A", "cable_run.array.south.area": "2.08 mm2", "cable_run.array.south.grounding_size": "14 AWG"}, "about": "cable_run.array.south", "verdict": "meets"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, grounding_conductor.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# Without a device the rating that one would have counts: 1.5625 x 38.4 A = 60 A
# takes 10 AWG, and a step more 8 AWG.
without_device[name] := verdicts if {
	some name, current in {"60 A": "38.4 A", "a step above": "38.404 A"}
	system := test.facts("meets")
	bare := object.union(system, {"cable_runs": [object.union(r, {"protections": []}) | some r in system.cable_runs]})
	all := test.verdicts(bare, grounding_conductor.check, {"cable_run.array.south.current": current}) with input as bare
	verdicts := [v.verdict | some v in all; v.about == "cable_run.array.south"]
}

test_without_device if without_device == {"60 A": ["meets"], "a step above": ["breaks"]}
