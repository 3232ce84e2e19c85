package codebooks.bookname.ventilation_test

import data.codebooks.bookname.ventilation

cases := {
	"vented": {"facts": {}, "verdict": "meets"},
	"closed": {"facts": {"bank.house.declared.bookname.vented": false}, "verdict": "breaks"},
	"silent": {"facts": {"bank.house.declared.bookname.vented": null}, "verdict": "unproven"},
	"sealed, closed": {"facts": {"battery.bog-12.chemistry": "lifepo4", "bank.house.declared.bookname.vented": false}, "verdict": "does_not_apply"},
	"of a kind unknown, closed": {"facts": {"battery.bog-12.chemistry": null, "bank.house.declared.bookname.vented": false}, "verdict": "unproven"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts("meets")
	verdicts := test.verdicts(system, ventilation.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == "bank.house"]
}
