package codebooks.practice.winter_balance_test

import data.codebooks.practice.winter_balance

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"exactly at the limit, backed": {"design": "meets", "facts": {"site.sky": "weather year", "system.worst_month_cover": "30 %"}, "about": "system", "verdict": "meets"},
	"a step above, backed": {"design": "meets", "facts": {"site.sky": "weather year", "system.worst_month_cover": "30.003 %"}, "about": "system", "verdict": "meets"},
	"a step below, backed": {"design": "meets", "facts": {"site.sky": "weather year", "system.worst_month_cover": "29.997 %"}, "about": "system", "verdict": "breaks"},
	"a clear sky counts for a quarter": {"design": "meets", "facts": {"site.sky": "clear sky", "system.worst_month_cover": "120 %"}, "about": "system", "verdict": "meets"},
	"a step below, under a clear sky": {"design": "meets", "facts": {"site.sky": "clear sky", "system.worst_month_cover": "119.98 %"}, "about": "system", "verdict": "breaks"},
	"nothing else charges, a step below": {"design": "meets", "facts": {"site.sky": "weather year", "system.backed": false, "system.worst_month_cover": "99.99 %"}, "about": "system", "verdict": "breaks"},
	"nothing else charges, exactly at the limit": {"design": "meets", "facts": {"site.sky": "weather year", "system.backed": false, "system.worst_month_cover": "100 %"}, "about": "system", "verdict": "meets"},
	"unknown whether anything else charges": {"design": "meets", "facts": {"system.backed": null}, "about": "system", "verdict": "unproven"},
	"unknown": {"design": "meets", "facts": {"system.worst_month_cover": null}, "about": "system", "verdict": "unproven"},
	"unknown sky": {"design": "meets", "facts": {"site.sky": null}, "about": "system", "verdict": "unproven"},
	"unknown longitude": {"design": "meets", "facts": {"site.longitude": null}, "about": "system", "verdict": "unproven"},
	"unknown loads": {"design": "meets", "facts": {"system.daily_load": null}, "about": "system", "verdict": "unproven"},
	"no loads": {"design": "meets", "facts": {"system.daily_load": "0 Wh"}, "about": "system", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, winter_balance.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
