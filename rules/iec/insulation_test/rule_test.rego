package codebooks.iec.insulation_test_test

import data.codebooks.iec.insulation_test

# Each case: the design, the facts put in place of its own, and the verdict owed. At
# which voltages the rows of the standard's table begin is the facts' to know, and is
# tested with them.
cases := {
	"500 V due, tested with 250 V": {"design": "meets", "facts": {"string.south.a.insulation_test_voltage": "500 V", "string.south.a.declared.iec.insulation_test_voltage": "250 V"}, "about": "string.south.a", "which": "test voltage", "verdict": "breaks"},
	"500 V due, tested with 500 V": {"design": "meets", "facts": {"string.south.a.insulation_test_voltage": "500 V", "string.south.a.declared.iec.insulation_test_voltage": "500 V"}, "about": "string.south.a", "which": "test voltage", "verdict": "meets"},
	"500 V due, a step less": {"design": "meets", "facts": {"string.south.a.insulation_test_voltage": "500 V", "string.south.a.declared.iec.insulation_test_voltage": "499 V"}, "about": "string.south.a", "which": "test voltage", "verdict": "breaks"},
	"what is due is unknown": {"design": "meets", "facts": {"string.south.a.insulation_test_voltage": null, "string.south.a.declared.iec.insulation_test_voltage": "500 V"}, "about": "string.south.a", "which": "test voltage", "verdict": "unproven"},
	"test voltage silent": {"design": "meets", "facts": {"string.south.a.insulation_test_voltage": "250 V", "string.south.a.declared.iec.insulation_test_voltage": null}, "about": "string.south.a", "which": "test voltage", "verdict": "unproven"},
	"0.5 Mohm due": {"design": "meets", "facts": {"string.south.a.insulation_resistance_min": "500000 ohm", "string.south.a.declared.iec.insulation_resistance": "500000 ohm"}, "about": "string.south.a", "which": "resistance", "verdict": "meets"},
	"0.5 Mohm due, a step less": {"design": "meets", "facts": {"string.south.a.insulation_resistance_min": "500000 ohm", "string.south.a.declared.iec.insulation_resistance": "499999 ohm"}, "about": "string.south.a", "which": "resistance", "verdict": "breaks"},
	"1 Mohm due": {"design": "meets", "facts": {"string.south.a.insulation_resistance_min": "1000000 ohm", "string.south.a.declared.iec.insulation_resistance": "1000000 ohm"}, "about": "string.south.a", "which": "resistance", "verdict": "meets"},
	"1 Mohm due, a step less": {"design": "meets", "facts": {"string.south.a.insulation_resistance_min": "1000000 ohm", "string.south.a.declared.iec.insulation_resistance": "999999 ohm"}, "about": "string.south.a", "which": "resistance", "verdict": "breaks"},
	"what is due is unknown, resistance": {"design": "meets", "facts": {"string.south.a.insulation_resistance_min": null, "string.south.a.declared.iec.insulation_resistance": "1000000 ohm"}, "about": "string.south.a", "which": "resistance", "verdict": "unproven"},
	"a slip, milliohm for megohm": {"design": "meets", "facts": {"string.south.a.declared.iec.insulation_resistance": "4 mohm"}, "about": "string.south.a", "which": "resistance", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"string.south.a.declared.iec.insulation_resistance": null}, "about": "string.south.a", "which": "resistance", "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, insulation_test.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# Two verdicts, and no word that no reading has been made.
test_verdicts_on_string if {
	system := test.facts("meets")
	verdicts := test.verdicts(system, insulation_test.check, {}) with input as system
	{"test voltage", "resistance"} == {object.get(v, "which", "") | some v in verdicts; v.about == "string.south.a"}
}

# Before a reading has been made nothing is due.
test_no_reading if {
	system := test.facts("meets")
	changed := object.union(system, {"readings": []})
	verdicts := test.verdicts(changed, insulation_test.check, {}) with input as changed
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "string.south.a"]
}

# A reading of another string says nothing of this one.
test_reading_of_another if {
	system := test.facts("meets")
	changed := object.union(system, {"readings": [object.union(r, {"strings": [{"id": "string.other.b"}]}) | some r in system.readings]})
	verdicts := test.verdicts(changed, insulation_test.check, {}) with input as changed
	["does_not_apply"] == [v.verdict | some v in verdicts; v.about == "string.south.a"]
}
