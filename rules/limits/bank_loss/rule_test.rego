package codebooks.limits.bank_loss_test

import data.codebooks.limits.bank_loss

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"yes": {"design": "meets", "facts": {"controller.reed-70.survives_bank_loss": true}, "about": "charger.main", "verdict": "meets"},
	"no": {"design": "meets", "facts": {"controller.reed-70.survives_bank_loss": false}, "about": "charger.main", "verdict": "breaks"},
	"silent": {"design": "meets", "facts": {"controller.reed-70.survives_bank_loss": null}, "about": "charger.main", "verdict": "unproven"},
	"lead": {"design": "meets", "facts": {"battery.peat-100.chemistry": "agm"}, "about": "charger.main", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, bank_loss.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
