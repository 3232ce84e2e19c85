package codebooks.us_2023.small_conductor_test

import data.codebooks.us_2023.small_conductor

# Check value B7 (public transcription); 10 AWG in free air has 55 A and still takes no 35 A breaker.

# Each case: the design, the facts put in place of its own, and the verdict owed.
cases := {
	"10 AWG: exactly at the limit": {"design": "meets", "facts": {"protection.string.south.a.rating": "30 A"}, "about": "protection.string.south.a", "verdict": "meets"},
	"10 AWG: a step below": {"design": "meets", "facts": {"protection.string.south.a.rating": "29.997 A"}, "about": "protection.string.south.a", "verdict": "meets"},
	"10 AWG: a step above": {"design": "meets", "facts": {"protection.string.south.a.rating": "30.003 A"}, "about": "protection.string.south.a", "verdict": "breaks"},
	"12 AWG: exactly at the limit": {"design": "meets", "facts": {"protection.load.lights.rating": "20 A"}, "about": "protection.load.lights", "verdict": "meets"},
	"12 AWG: a step below": {"design": "meets", "facts": {"protection.load.lights.rating": "19.998 A"}, "about": "protection.load.lights", "verdict": "meets"},
	"12 AWG: a step above": {"design": "meets", "facts": {"protection.load.lights.rating": "20.002 A"}, "about": "protection.load.lights", "verdict": "breaks"},
	"14 AWG: exactly at the limit": {"design": "meets", "facts": {"cable_run.load.lights.size": "14 AWG", "protection.load.lights.rating": "15 A"}, "about": "protection.load.lights", "verdict": "meets"},
	"14 AWG: a step below": {"design": "meets", "facts": {"cable_run.load.lights.size": "14 AWG", "protection.load.lights.rating": "14.9985 A"}, "about": "protection.load.lights", "verdict": "meets"},
	"14 AWG: a step above": {"design": "meets", "facts": {"cable_run.load.lights.size": "14 AWG", "protection.load.lights.rating": "15.0015 A"}, "about": "protection.load.lights", "verdict": "breaks"},
	"16 AWG: exactly at the limit": {"design": "meets", "facts": {"cable_run.load.lights.size": "16 AWG", "protection.load.lights.rating": "10 A"}, "about": "protection.load.lights", "verdict": "meets"},
	"16 AWG: a step below": {"design": "meets", "facts": {"cable_run.load.lights.size": "16 AWG", "protection.load.lights.rating": "9.999 A"}, "about": "protection.load.lights", "verdict": "meets"},
	"16 AWG: a step above": {"design": "meets", "facts": {"cable_run.load.lights.size": "16 AWG", "protection.load.lights.rating": "10.001 A"}, "about": "protection.load.lights", "verdict": "breaks"},
	"18 AWG: exactly at the limit": {"design": "meets", "facts": {"cable_run.load.lights.size": "18 AWG", "protection.load.lights.rating": "7 A"}, "about": "protection.load.lights", "verdict": "meets"},
	"18 AWG: a step below": {"design": "meets", "facts": {"cable_run.load.lights.size": "18 AWG", "protection.load.lights.rating": "6.9993 A"}, "about": "protection.load.lights", "verdict": "meets"},
	"18 AWG: a step above": {"design": "meets", "facts": {"cable_run.load.lights.size": "18 AWG", "protection.load.lights.rating": "7.0007 A"}, "about": "protection.load.lights", "verdict": "breaks"},
	"12 AWG aluminum: exactly at the limit": {"design": "meets", "facts": {"cable_run.load.lights.material": "Al", "protection.load.lights.rating": "15 A"}, "about": "protection.load.lights", "verdict": "meets"},
	"12 AWG aluminum: a step below": {"design": "meets", "facts": {"cable_run.load.lights.material": "Al", "protection.load.lights.rating": "14.9985 A"}, "about": "protection.load.lights", "verdict": "meets"},
	"12 AWG aluminum: a step above": {"design": "meets", "facts": {"cable_run.load.lights.material": "Al", "protection.load.lights.rating": "15.0015 A"}, "about": "protection.load.lights", "verdict": "breaks"},
	"10 AWG aluminum: exactly at the limit": {"design": "meets", "facts": {"cable_run.string.south.a.material": "Al", "protection.string.south.a.rating": "25 A"}, "about": "protection.string.south.a", "verdict": "meets"},
	"10 AWG aluminum: a step below": {"design": "meets", "facts": {"cable_run.string.south.a.material": "Al", "protection.string.south.a.rating": "24.9975 A"}, "about": "protection.string.south.a", "verdict": "meets"},
	"10 AWG aluminum: a step above": {"design": "meets", "facts": {"cable_run.string.south.a.material": "Al", "protection.string.south.a.rating": "25.0025 A"}, "about": "protection.string.south.a", "verdict": "breaks"},
	"10 AWG in free air, 55 A: a 35 A device": {"design": "meets", "facts": {"protection.string.south.a.rating": "35 A", "cable_run.string.south.a.ambient": "30 degC"}, "about": "protection.string.south.a", "verdict": "breaks"},
	"no conductor beside it": {"design": "breaks", "facts": {}, "about": "protection.supply.twelve", "verdict": "breaks"},
	"each battery's": {"design": "meets", "facts": {}, "about": "protection.bank.house.each", "verdict": "does_not_apply"},
	"8 AWG is larger": {"design": "meets", "facts": {"protection.string.south.a.rating": "35 A", "cable_run.string.south.a.size": "8 AWG"}, "about": "protection.string.south.a", "verdict": "does_not_apply"},
	"8.37 mm2, as printed, is 8 AWG": {"design": "meets", "facts": {"protection.string.south.a.rating": "35 A", "cable_run.string.south.a.size": "8.37 mm2"}, "about": "protection.string.south.a", "verdict": "does_not_apply"},
	"6 mm2 is 10 AWG": {"design": "meets", "facts": {"protection.string.south.a.rating": "35 A", "cable_run.string.south.a.size": "6 mm2"}, "about": "protection.string.south.a", "verdict": "breaks"},
	"8.3 mm2 is 10 AWG": {"design": "meets", "facts": {"protection.string.south.a.rating": "35 A", "cable_run.string.south.a.size": "8.3 mm2"}, "about": "protection.string.south.a", "verdict": "breaks"},
	"0.81 mm2 stands in no list": {"design": "meets", "facts": {"protection.load.lights.rating": "5 A", "cable_run.load.lights.size": "0.81 mm2"}, "about": "protection.load.lights", "verdict": "breaks"},
	"3.25 mm2 of aluminum stands in no list": {"design": "meets", "facts": {"protection.load.lights.rating": "5 A", "cable_run.load.lights.material": "Al", "cable_run.load.lights.size": "3.25 mm2"}, "about": "protection.load.lights", "verdict": "breaks"},
	"14 AWG aluminum stands in no list": {"design": "meets", "facts": {"protection.load.lights.rating": "5 A", "cable_run.load.lights.material": "Al", "cable_run.load.lights.size": "14 AWG"}, "about": "protection.load.lights", "verdict": "breaks"},
	"0.75 mm2 stands in no list": {"design": "meets", "facts": {"protection.load.lights.rating": "5 A", "cable_run.load.lights.size": "0.75 mm2"}, "about": "protection.load.lights", "verdict": "breaks"},
	"unknown protection.string.south.a.rating": {"design": "meets", "facts": {"protection.string.south.a.rating": null}, "about": "protection.string.south.a", "verdict": "unproven"},
	"unknown cable_run.string.south.a.size": {"design": "meets", "facts": {"cable_run.string.south.a.size": null}, "about": "protection.string.south.a", "verdict": "unproven"},
	"on a boat": {"design": "meets", "facts": {"site.place": "boat"}, "about": "protection.string.south.a", "verdict": "does_not_apply"},
	"on a boat, protection.load.lights": {"design": "meets", "facts": {"site.place": "boat"}, "about": "protection.load.lights", "verdict": "does_not_apply"},
}

test_cases[name] if {
	some name, c in cases
	system := test.facts(c.design)
	verdicts := test.verdicts(system, small_conductor.check, c.facts) with input as system
	[c.verdict] == [v.verdict | some v in verdicts; v.about == c.about; object.get(v, "which", null) == object.get(c, "which", null)]
}

# Any block may be named "each": only a device in each string of a bank has its
# maker's links for a conductor, and a bare fuse elsewhere has none described.
bare_devices[id] := owed if {
	some id in {"protection.load.each", "protection.bank.each", "protection.bank.house.each"}
	system := test.facts("meets")
	bare := object.union(system, {"protections": [object.union(p, {"id": id, "cable_runs": []}) | some p in system.protections; p.id == "protection.load.lights"]})
	records := small_conductor.check with input as bare
	owed := {object.get(r, "does_not_apply", object.get(r, "because", "judged")) | some r in records; r.about == id}
}

test_named_each if bare_devices == {
	"protection.load.each": {"no conductor is described that it protects"},
	"protection.bank.each": {"no conductor is described that it protects"},
	"protection.bank.house.each": {"the links between batteries are their maker's"},
}
