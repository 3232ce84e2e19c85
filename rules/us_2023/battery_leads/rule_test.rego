package codebooks.us_2023.battery_leads_test

import data.codebooks.us_2023.battery_leads

# 240.4(B) and 240.6(A), check value B7: 115 A may have 125 A; 110 A has 110 A.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"125 A on leads of 115 A: the next standard size": {"design": "meets", "facts": {"bank.house.declared.us_2023.leads_ampacity": "115 A"}, "about": "bank.house", "verdict": "meets"},
	"exactly 125 A": {"design": "meets", "facts": {"bank.house.declared.us_2023.leads_ampacity": "125 A"}, "about": "bank.house", "verdict": "meets"},
	"125 A on leads of 110 A, itself a standard size": {"design": "meets", "facts": {"bank.house.declared.us_2023.leads_ampacity": "110 A"}, "about": "bank.house", "verdict": "breaks"},
	"125 A on leads of 110.1 A": {"design": "meets", "facts": {"bank.house.declared.us_2023.leads_ampacity": "110.1 A"}, "about": "bank.house", "verdict": "meets"},
	"a step above": {"design": "meets", "facts": {"bank.house.declared.us_2023.leads_ampacity": "115 A", "protection.bank.house.each.rating": "125.1 A"}, "about": "bank.house", "verdict": "breaks"},
	"exactly 800 A": {"design": "meets", "facts": {"bank.house.declared.us_2023.leads_ampacity": "800 A", "protection.bank.house.each.rating": "800 A"}, "about": "bank.house", "verdict": "meets"},
	"801 A on 796 A: 800 A is the most": {"design": "meets", "facts": {"bank.house.declared.us_2023.leads_ampacity": "796 A", "protection.bank.house.each.rating": "801 A"}, "about": "bank.house", "verdict": "breaks"},
	"798 A on 795 A: 800 A is allowed": {"design": "meets", "facts": {"bank.house.declared.us_2023.leads_ampacity": "795 A", "protection.bank.house.each.rating": "798 A"}, "about": "bank.house", "verdict": "meets"},
	"above 800 A not rounded": {"design": "meets", "facts": {"bank.house.declared.us_2023.leads_ampacity": "805 A", "protection.bank.house.each.rating": "806 A"}, "about": "bank.house", "verdict": "breaks"},
	"above 800 A, as it is": {"design": "meets", "facts": {"bank.house.declared.us_2023.leads_ampacity": "805 A", "protection.bank.house.each.rating": "805 A"}, "about": "bank.house", "verdict": "meets"},
	"leads unknown": {"design": "meets", "facts": {"bank.house.declared.us_2023.leads_ampacity": null}, "about": "bank.house", "verdict": "unproven"},
	"one string": {"design": "meets", "facts": {"bank.house.declared.us_2023.leads_ampacity": "10 A", "bank.house.parallel": 1}, "about": "bank.house", "verdict": "does_not_apply"},
	"no fuse at all": {"design": "breaks", "facts": {}, "about": "bank.house", "verdict": "breaks"},
	"no fuse, one string": {"design": "breaks", "facts": {"bank.house.parallel": 1}, "about": "bank.house", "verdict": "does_not_apply"},
	"no fuse, on a boat": {"design": "breaks", "facts": {"site.place": "boat"}, "about": "bank.house", "verdict": "does_not_apply"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat", "bank.house.declared.us_2023.leads_ampacity": "10 A"}, "about": "bank.house", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, battery_leads.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
