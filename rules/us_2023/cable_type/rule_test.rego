package codebooks.us_2023.cable_type_test

import data.codebooks.us_2023.cable_type

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"USE-2 that is RHW-2": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.cable_type": "use2_rhw2"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"THWN-2": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.cable_type": "thwn2"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"a cable of several cores": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.cable_type": "other", "cable_run.string.south.a.cores": "multi"}, "about": "cable_run.string.south.a", "verdict": "does_not_apply"},
	"directly in the earth, PV wire": {"design": "meets", "facts": {"cable_run.string.south.a.method": "direct_buried"}, "about": "cable_run.string.south.a", "verdict": "meets"},
	"directly in the earth, THWN-2": {"design": "meets", "facts": {"cable_run.string.south.a.method": "direct_buried", "cable_run.string.south.a.declared.us_2023.cable_type": "thwn2"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"directly in the earth, from inside to inside, THWN-2": {"design": "meets", "facts": {"cable_run.string.south.a.method": "direct_buried", "cable_run.string.south.a.declared.us_2023.cable_type": "thwn2", "cable_run.string.south.a.indoors": true, "cable_run.string.south.a.declared.us_2023.on_roof": false, "cable_run.string.south.a.declared.us_2023.raceway": "metal"}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"in a raceway below ground, THWN-2": {"design": "meets", "facts": {"cable_run.string.south.a.method": "buried", "cable_run.string.south.a.declared.us_2023.cable_type": "thwn2", "cable_run.string.south.a.indoors": true, "cable_run.string.south.a.declared.us_2023.on_roof": false}, "about": "cable_run.string.south.a", "which": "in a wet raceway", "verdict": "meets"},
	"in a raceway below ground that is not told, THWN-2": {"design": "meets", "facts": {"cable_run.string.south.a.method": "buried", "cable_run.string.south.a.declared.us_2023.cable_type": "thwn2"}, "about": "cable_run.string.south.a", "which": "in a wet raceway", "verdict": "meets"},
	"in a raceway below ground, NM": {"design": "meets", "facts": {"cable_run.string.south.a.method": "buried", "cable_run.string.south.a.declared.us_2023.cable_type": "nm", "cable_run.string.south.a.indoors": true, "cable_run.string.south.a.declared.us_2023.on_roof": false}, "about": "cable_run.string.south.a", "which": "in a wet raceway", "verdict": "breaks"},
	"in a raceway outside, THWN-2": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.cable_type": "thwn2", "cable_run.string.south.a.declared.us_2023.raceway": "nonmetallic"}, "about": "cable_run.string.south.a", "which": "in a wet raceway", "verdict": "meets"},
	"in a raceway outside, several cores": {"design": "meets", "facts": {"cable_run.string.south.a.cores": "multi", "cable_run.string.south.a.declared.us_2023.cable_type": "nm", "cable_run.string.south.a.declared.us_2023.raceway": "metal"}, "about": "cable_run.string.south.a", "which": "in a wet raceway", "verdict": "does_not_apply"},
	"in a raceway outside, on a boat": {"design": "meets", "facts": {"site.place": "boat", "cable_run.string.south.a.declared.us_2023.cable_type": "nm", "cable_run.string.south.a.declared.us_2023.raceway": "metal"}, "about": "cable_run.string.south.a", "which": "in a wet raceway", "verdict": "does_not_apply"},
	"in a raceway outside, PV wire": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.raceway": "metal"}, "about": "cable_run.string.south.a", "which": "in a wet raceway", "verdict": "meets"},
	"in a raceway outside, USE-2": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.cable_type": "use2_rhw2", "cable_run.string.south.a.declared.us_2023.raceway": "metal"}, "about": "cable_run.string.south.a", "which": "in a wet raceway", "verdict": "meets"},
	"in a raceway outside, of what type unknown": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.cable_type": null, "cable_run.string.south.a.declared.us_2023.raceway": "metal"}, "about": "cable_run.string.south.a", "which": "in a wet raceway", "verdict": "unproven"},
	"in a raceway outside, XHHW-2": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.cable_type": "xhhw2", "cable_run.string.south.a.declared.us_2023.raceway": "metal"}, "about": "cable_run.string.south.a", "which": "in a wet raceway", "verdict": "meets"},
	"in a raceway below ground that is not told, in the open it is not": {"design": "meets", "facts": {"cable_run.string.south.a.method": "buried", "cable_run.string.south.a.declared.us_2023.cable_type": "thwn2"}, "about": "cable_run.string.south.a", "verdict": "does_not_apply"},
	"inside, NM in a raceway": {"design": "meets", "facts": {"cable_run.array.south.declared.us_2023.cable_type": "nm"}, "about": "cable_run.array.south", "which": "in a wet raceway", "verdict": "does_not_apply"},
	"in a raceway outside, NM": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.cable_type": "nm", "cable_run.string.south.a.declared.us_2023.raceway": "nonmetallic"}, "about": "cable_run.string.south.a", "which": "in a wet raceway", "verdict": "breaks"},
	"in a raceway on the ground outside, NM": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.cable_type": "nm", "cable_run.string.south.a.declared.us_2023.raceway": "metal", "cable_run.string.south.a.declared.us_2023.on_roof": false}, "about": "cable_run.string.south.a", "which": "in a wet raceway", "verdict": "breaks"},
	"metal-clad cable outside, raceway": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.cable_type": "other", "cable_run.string.south.a.declared.us_2023.raceway": "mc_cable"}, "about": "cable_run.string.south.a", "which": "in a wet raceway", "verdict": "does_not_apply"},
	"metal-clad cable outside": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.cable_type": "other", "cable_run.string.south.a.declared.us_2023.raceway": "mc_cable"}, "about": "cable_run.string.south.a", "verdict": "does_not_apply"},
	"on the roof and inside, THWN-2 in the open": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.cable_type": "thwn2", "cable_run.string.south.a.indoors": true}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"on the roof and inside, NM in a raceway": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.cable_type": "nm", "cable_run.string.south.a.indoors": true, "cable_run.string.south.a.declared.us_2023.raceway": "metal"}, "about": "cable_run.string.south.a", "which": "in a wet raceway", "verdict": "breaks"},
	"inside, NM, raceway": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.cable_type": "nm", "cable_run.string.south.a.indoors": true, "cable_run.string.south.a.declared.us_2023.on_roof": false}, "about": "cable_run.string.south.a", "which": "in a wet raceway", "verdict": "does_not_apply"},
	"inside, NM": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.cable_type": "nm", "cable_run.string.south.a.indoors": true, "cable_run.string.south.a.declared.us_2023.on_roof": false}, "about": "cable_run.string.south.a", "verdict": "does_not_apply"},
	"in the open, no roof, THWN-2": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.cable_type": "thwn2", "cable_run.string.south.a.declared.us_2023.on_roof": false}, "about": "cable_run.string.south.a", "verdict": "breaks"},
	"indoors": {"design": "meets", "facts": {}, "about": "cable_run.array.south", "verdict": "does_not_apply"},
	"unknown cable_run.string.south.a.declared.us_2023.cable_type": {"design": "meets", "facts": {"cable_run.string.south.a.declared.us_2023.cable_type": null}, "about": "cable_run.string.south.a", "verdict": "unproven"},
	"unknown cable_run.string.south.a.indoors": {"design": "meets", "facts": {"cable_run.string.south.a.indoors": null, "cable_run.string.south.a.declared.us_2023.on_roof": false}, "about": "cable_run.string.south.a", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "cable_run.string.south.a", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, cable_type.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
