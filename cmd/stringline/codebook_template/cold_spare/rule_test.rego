package codebooks.bookname.cold_spare_test

import data.codebooks.bookname.cold_spare

# Each case: the design, the facts put in place of its own, and the verdict owed.
# Both sides of a limit, exactly at it, and each unknown.
cases := {
	"exactly at the limit": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "100 V", "controller.reed-70.pv_voltage_max": "105 V"}, "verdict": "meets"},
	"a step below": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "99.99 V", "controller.reed-70.pv_voltage_max": "105 V"}, "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "100.01 V", "controller.reed-70.pv_voltage_max": "105 V"}, "verdict": "breaks"},
	"more spare asked for": {"design": "meets", "facts": {"pv_input.main.1.voc_cold": "100 V", "controller.reed-70.pv_voltage_max": "105 V", "param.bookname.cold_spare": "6 %"}, "verdict": "breaks"},
	"unknown coefficient": {"design": "meets", "facts": {"panel.fen-200.temp_voc": null}, "verdict": "unproven"},
	"unknown limit": {"design": "meets", "facts": {"controller.reed-70.pv_voltage_max": null}, "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, cold_spare.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == "pv_input.main.1"]
}
