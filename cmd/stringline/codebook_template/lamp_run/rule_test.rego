package codebooks.bookname.lamp_run_test

import data.codebooks.bookname.lamp_run

# The rows of the table at their edges: a size between two rows takes the lower.
cases := {
	"2.5 mm2, exactly at the limit": {"facts": {"cable_run.load.lamps.length": "16 m"}, "verdict": "meets"},
	"2.5 mm2, a step above": {"facts": {"cable_run.load.lamps.length": "16.01 m"}, "verdict": "breaks"},
	"just below 2.5 mm2": {"facts": {"cable_run.load.lamps.area": "2.49 mm2", "cable_run.load.lamps.length": "10.01 m"}, "verdict": "breaks"},
	"1.5 mm2, exactly at the limit": {"facts": {"cable_run.load.lamps.area": "1.5 mm2", "cable_run.load.lamps.length": "10 m"}, "verdict": "meets"},
	"larger than any row": {"facts": {"cable_run.load.lamps.area": "6 mm2", "cable_run.load.lamps.length": "25 m"}, "verdict": "meets"},
	"smaller than any row": {"facts": {"cable_run.load.lamps.area": "0.4 mm2"}, "verdict": "void"},
	"unknown length": {"facts": {"cable_run.load.lamps.length": null}, "verdict": "unproven"},
	"unknown size": {"facts": {"cable_run.load.lamps.size": null}, "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts("meets")
	verdicts := test.verdicts(system, lamp_run.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == "cable_run.load.lamps"]
}

# The array's conductor, which breaks.design.hcl has, is no lamp's.
test_not_a_lamp if {
	system := test.facts("breaks")
	verdicts := test.verdicts(system, lamp_run.check, {}) with input as system
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "cable_run.array.south"]
}
