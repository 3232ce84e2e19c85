package codebooks.us_2023.electrode_test

import data.codebooks.us_2023.electrode

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"no electrode": {"design": "meets", "facts": {"grounding.declared.us_2023.electrode": false}, "about": "grounding", "which": "electrode", "verdict": "breaks"},
	"with one": {"design": "meets", "facts": {}, "about": "grounding", "which": "electrode", "verdict": "meets"},
	"1/0 AWG beside 1/0 AWG": {"design": "meets", "facts": {}, "about": "grounding", "which": "conductor", "verdict": "meets"},
	"1 AWG beside 1/0 AWG": {"design": "meets", "facts": {"grounding.declared.us_2023.gec_size": "1 AWG"}, "about": "grounding", "which": "conductor", "verdict": "breaks"},
	"a rod: 6 AWG": {"design": "meets", "facts": {"grounding.declared.us_2023.gec_size": "6 AWG", "grounding.declared.us_2023.rod_only": true}, "about": "grounding", "which": "conductor", "verdict": "meets"},
	"a rod: 8 AWG": {"design": "meets", "facts": {"grounding.declared.us_2023.gec_size": "8 AWG", "grounding.declared.us_2023.rod_only": true}, "about": "grounding", "which": "conductor", "verdict": "breaks"},
	"250 kcmil needs no more than 3/0 AWG": {"design": "meets", "facts": {"cable_run.bank.house.size": "250 kcmil", "grounding.declared.us_2023.gec_size": "3/0 AWG"}, "about": "grounding", "which": "conductor", "verdict": "meets"},
	"250 kcmil, 2/0 AWG": {"design": "meets", "facts": {"cable_run.bank.house.size": "250 kcmil", "grounding.declared.us_2023.gec_size": "2/0 AWG"}, "about": "grounding", "which": "conductor", "verdict": "breaks"},
	"floating": {"design": "meets", "facts": {"grounding.dc": "floating"}, "about": "grounding", "which": "conductor", "verdict": "does_not_apply"},
	"a rod: 13.1 mm2": {"design": "meets", "facts": {"grounding.declared.us_2023.gec_size": "13.1 mm2", "grounding.declared.us_2023.rod_only": true}, "about": "grounding", "which": "conductor", "verdict": "breaks"},
	"250 kcmil, 84.7 mm2": {"design": "meets", "facts": {"cable_run.bank.house.size": "250 kcmil", "grounding.declared.us_2023.gec_size": "84.7 mm2"}, "about": "grounding", "which": "conductor", "verdict": "meets"},
	"250 kcmil, 84.4 mm2": {"design": "meets", "facts": {"cable_run.bank.house.size": "250 kcmil", "grounding.declared.us_2023.gec_size": "84.4 mm2"}, "about": "grounding", "which": "conductor", "verdict": "breaks"},
	"small conductors alone: 8 AWG": {"design": "meets", "facts": {"cable_run.bank.house.size": "14 AWG", "cable_run.charger.main.size": "14 AWG", "cable_run.array.south.size": "14 AWG", "cable_run.string.south.a.size": "14 AWG", "cable_run.ac_output.shop.size": "14 AWG", "cable_run.load.lights.size": "14 AWG", "cable_run.supply.twelve.size": "14 AWG", "cable_run.charge_source.engine.size": "14 AWG", "grounding.declared.us_2023.gec_size": "8 AWG"}, "about": "grounding", "which": "conductor", "verdict": "meets"},
	"small conductors alone: 8.3 mm2": {"design": "meets", "facts": {"cable_run.bank.house.size": "14 AWG", "cable_run.charger.main.size": "14 AWG", "cable_run.array.south.size": "14 AWG", "cable_run.string.south.a.size": "14 AWG", "cable_run.ac_output.shop.size": "14 AWG", "cable_run.load.lights.size": "14 AWG", "cable_run.supply.twelve.size": "14 AWG", "cable_run.charge_source.engine.size": "14 AWG", "grounding.declared.us_2023.gec_size": "8.3 mm2"}, "about": "grounding", "which": "conductor", "verdict": "breaks"},
	"unknown grounding.declared.us_2023.electrode": {"design": "meets", "facts": {"grounding.declared.us_2023.electrode": null}, "about": "grounding", "which": "electrode", "verdict": "unproven"},
	"unknown grounding.declared.us_2023.gec_size": {"design": "meets", "facts": {"grounding.declared.us_2023.gec_size": null}, "about": "grounding", "which": "conductor", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "grounding", "which": "electrode", "verdict": "does_not_apply"},
	"on a boat, conductor": {"design": "meets", "facts": {"site.place": "boat"}, "about": "grounding", "which": "conductor", "verdict": "does_not_apply"},
	"250 kcmil on the AC side asks for nothing": {"design": "meets", "facts": {"cable_run.load.pump.size": "250 kcmil"}, "about": "grounding", "which": "conductor", "verdict": "meets"},
	"250 kcmil to a dc load does": {"design": "meets", "facts": {"cable_run.load.lights.size": "250 kcmil"}, "about": "grounding", "which": "conductor", "verdict": "breaks"},
	"the area counts, however the size is written": {"design": "meets", "facts": {"cable_run.bank.house.area": "67.4 mm2"}, "about": "grounding", "which": "conductor", "verdict": "breaks"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, electrode.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}
