package judge_test

import (
	"context"
	"errors"
	"fmt"
	"strings"
	"sync"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint/judge"
	"stringline/lint/verdict"
)

const bookHead = `
-- codebook.hcl --
name    = "small"
version = "1.0.0"
source "sheet" {
  title  = "makers' data sheets"
  status = "read"
}
`

// lines shows verdicts one a line, as much as the tests here look at.
func lines(vs []verdict.Verdict) []string {
	var out []string
	for _, v := range vs {
		line := strings.TrimPrefix(v.Rule, "small.") + " " + v.About
		if v.Which != "" {
			line += " (" + v.Which + ")"
		}
		line += ": " + string(v.Outcome)
		if v.Spare != nil {
			line += fmt.Sprintf(", spare %.6g %s", v.Spare.Value, v.Spare.Unit)
		}
		if v.Headroom != nil {
			line += fmt.Sprintf(", headroom %.4f", *v.Headroom)
		}
		if len(v.Missing) > 0 {
			line += ", missing " + strings.Join(v.Missing, " ")
		}
		if v.Because != "" {
			line += ", because " + v.Because
		}
		if v.Fault != nil {
			line += fmt.Sprintf(", %s: %s", v.Fault.At, v.Fault.Message)
		}
		out = append(out, line)
	}
	return out
}

func TestVerdicts(t *testing.T) {
	const coldVoltage = `check contains {"about": i.id, "is": i.voc_cold, "at_most": i.controller.pv_voltage_max} if some i in input.pv_inputs`
	// One panel of 49.5 V and -0.27 %/K at -10 degC gives 54.17775 V: data-sheet
	// method, worked example of published study notes (recomputed).
	published := strings.NewReplacer("37.4 V", "49.5 V", "-0.26 %/K", "-0.27 %/degC", "-27 degC", "-10 degC", `"slate" = 3`, `"slate" = 1`)
	limit := func(v string) string { return strings.Replace(published.Replace(hut), `"150 V"`, v, 1) }
	without := func(line string) string {
		if !strings.Contains(hut, line) {
			t.Fatalf("the design has no %q", line)
		}
		return strings.Replace(hut, line, "", 1)
	}
	with := func(block string) string { return hut + block }
	odd := strings.Replace(hut, `"25.6 V"`, `"30 V"`, 1) // a bank of no class of voltage
	const classless = "system voltage: 30 V is within -8 to +10 % of none of 12, 24, 36 and 48 V"
	const engine = "charge_source \"engine\" {\n  bank = \"house\"\n  together = true\n}\n"

	for _, test := range []struct {
		name, each, body, design string
		want                     []string
	}{
		{"exactly at the limit", "pv_inputs", coldVoltage, limit(`"54.17775 V"`), []string{"r pv_input.main.1: meets, spare 0 V, headroom 0.0000"}},
		{"below it", "pv_inputs", coldVoltage, limit(`"54.178 V"`), []string{"r pv_input.main.1: meets, spare 0.00025 V, headroom 0.0000"}},
		{"above it", "pv_inputs", coldVoltage, limit(`"54.177 V"`), []string{"r pv_input.main.1: breaks, spare -0.00075 V, headroom -0.0000"}},
		{"an unknown", "pv_inputs", coldVoltage, without(`  temp_voc = "-0.26 %/K"` + "\n"), []string{"r pv_input.main.1: unproven, missing panel.slate.temp_voc"}},
		{"an unknown limit", "pv_inputs", coldVoltage, without(`  pv_voltage_max     = "150 V"` + "\n"), []string{"r pv_input.main.1: unproven, missing controller.ridge.pv_voltage_max"}},
		{"a method without an answer asks for nothing", "banks", `check contains {"about": b.id, "is": b.system_voltage, "at_most": fact.number(48, "V")} if some b in input.banks`,
			odd, []string{"r bank.house: unproven, because " + classless}},
		{"beside an unknown it says why and what to supply", "banks", `check contains {"about": b.id, "is": b.system_voltage, "at_most": b.low_voltage_disconnect} if some b in input.banks`,
			odd, []string{"r bank.house: unproven, missing bank.house.low_voltage_disconnect, because " + classless}},
		{"a condition without an answer", "banks", `check contains {"about": b.id, "when": fact.at_least(b.system_voltage, fact.number(24, "V")), "is": b.nominal, "at_most": fact.number(48, "V")} if some b in input.banks`,
			odd, []string{"r bank.house: unproven, because " + classless}},
		{"logic that decides without it", "banks", `check contains {"about": b.id, "is_true": fact.any([fact.more_than(b.nominal, fact.number(1, "V")), fact.at_least(b.system_voltage, fact.number(24, "V"))]), "because": "x"} if some b in input.banks`,
			odd, []string{"r bank.house: meets"}},
		{"a bound past the limit breaks", "banks",
			`check contains {"about": b.id, "is": b.charge_current_rated, "at_most": fact.number(69.9, "A")} if some b in input.banks`,
			with(engine), []string{"r bank.house: breaks, missing charge_source.engine.charge_current"}},
		{"a bound exactly at the limit does not", "banks",
			`check contains {"about": b.id, "is": b.charge_current_rated, "at_most": fact.number(70, "A")} if some b in input.banks`,
			with(engine), []string{"r bank.house: unproven, missing charge_source.engine.charge_current"}},
		{"an unknown never meets, whatever its bound", "banks",
			`check contains {"about": b.id, "is": b.charge_current_rated, "at_least": fact.number(10, "A")} if some b in input.banks`,
			with(engine), []string{"r bank.house: unproven, missing charge_source.engine.charge_current"}},
		{"the smallest of a known and an unknown", "banks",
			`check contains {"about": b.id, "is": fact.number(71, "A"), "at_most": fact.smallest([fact.number(70, "A"), b.charge_current_rated])} if some b in input.banks`,
			with(engine), []string{"r bank.house: breaks, missing charge_source.engine.charge_current"}},
		{"at least, both sides", "banks", `check contains {"about": b.id, "which": w, "is": b.capacity, "at_least": fact.number(n, "Ah")} if {
	some b in input.banks
	some w, n in {"at": 400, "above": 400.1, "below": 399.9}
}`, hut, []string{"r bank.house (above): breaks, spare -0.1 Ah, headroom -0.0002", "r bank.house (at): meets, spare 0 Ah, headroom 0.0000", "r bank.house (below): meets, spare 0.1 Ah, headroom 0.0003"}},
		{"between, both ends", "banks", `check contains {"about": b.id, "which": w, "is": b.nominal, "between": [fact.number(n[0], "V"), fact.number(n[1], "V")]} if {
	some b in input.banks
	some w, n in {"inside": [20, 30], "low end": [25.6, 30], "high end": [20, 25.6], "under": [25.7, 30], "over": [20, 25.5]}
}`, hut, []string{"r bank.house (high end): meets, spare 0 V, headroom 0.0000", "r bank.house (inside): meets, spare 4.4 V, headroom 0.1467", "r bank.house (low end): meets, spare 0 V, headroom 0.0000",
			"r bank.house (over): breaks, spare -0.1 V, headroom -0.0039", "r bank.house (under): breaks, spare -0.1 V, headroom -0.0039"}},
		{"a temperature has spare, no headroom", "site", `check contains {"about": "site", "is": input.site.coldest, "at_least": fact.number(-30, "degC")}`, hut,
			[]string{"r site: meets, spare 3 K"}},
		{"a limit of 0 has no headroom", "panels", `check contains {"about": p.id, "is": p.temp_voc, "at_most": fact.number(0, "%/K")} if some p in input.panels`, hut,
			[]string{"r panel.slate: meets, spare 0.26 %/K"}},
		{"words are equal", "banks", `check contains {"about": b.id, "all_equal": [b.battery.chemistry, b.battery.chemistry]} if some b in input.banks`, hut,
			[]string{"r bank.house: meets"}},
		{"numbers that differ", "panels", `check contains {"about": p.id, "all_equal": [p.voc, p.vmp], "because": "they differ"} if some p in input.panels`, hut,
			[]string{"r panel.slate: breaks, because they differ"}},
		{"two that differ beside an unknown", "panels", `check contains {"about": p.id, "all_equal": [p.max_system_voltage, p.voc, p.vmp], "because": "they differ"} if some p in input.panels`, hut,
			[]string{"r panel.slate: breaks, missing panel.slate.max_system_voltage, because they differ"}},
		{"two that are equal beside an unknown", "panels", `check contains {"about": p.id, "all_equal": [p.max_system_voltage, p.voc, p.voc]} if some p in input.panels`, hut,
			[]string{"r panel.slate: unproven, missing panel.slate.max_system_voltage"}},
		{"is_true", "controllers", `check contains {"about": c.id, "is_true": fact.one_of(c.kind, ["pwm"]), "because": "it tracks"} if some c in input.controllers`, hut,
			[]string{"r controller.ridge: breaks, because it tracks"}},
		{"is_true of an unknown", "controllers", `check contains {"about": c.id, "is_true": c.isolated, "because": "it is not isolated"} if some c in input.controllers`, hut,
			[]string{"r controller.ridge: unproven, missing controller.ridge.isolated"}},
		{"structure alone decides", "banks", `check contains {"about": b.id, "is_true": count(b.protections) > 0, "because": "no main protection"} if some b in input.banks`, hut,
			[]string{"r bank.house: breaks, because no main protection"}},
		{"when says no", "controllers", `check contains {"about": c.id, "when": fact.one_of(c.kind, ["pwm"]), "otherwise": "it tracks", "is": c.pv_current_max, "at_most": c.charge_current_max} if some c in input.controllers`, hut,
			[]string{"r controller.ridge: does_not_apply, because it tracks"}},
		{"when says yes", "controllers", `check contains {"about": c.id, "when": fact.one_of(c.kind, ["mppt"]), "otherwise": "no", "is": c.charge_current_max, "at_most": fact.number(60, "A")} if some c in input.controllers`, hut,
			[]string{"r controller.ridge: breaks, spare -10 A, headroom -0.1667"}},
		{"a null word in when", "controllers", `check contains {"about": c.id, "when": fact.no(fact.one_of(c.common, ["positive"])), "otherwise": "no", "is": c.charge_current_max, "at_most": fact.number(60, "A")} if some c in input.controllers`, hut,
			[]string{"r controller.ridge: unproven, missing controller.ridge.common"}},
		{"Kleene: one yes settles any", "controllers", `check contains {"about": c.id, "is_true": fact.any([c.isolated, fact.one_of(c.kind, ["mppt"])]), "because": "x"} if some c in input.controllers`, hut,
			[]string{"r controller.ridge: meets"}},
		{"Kleene: one no settles all", "controllers", `check contains {"about": c.id, "is_true": fact.all([c.isolated, fact.one_of(c.kind, ["pwm"])]), "because": "x"} if some c in input.controllers`, hut,
			[]string{"r controller.ridge: breaks, because x"}},
		{"Kleene: an unknown among no is unknown", "controllers", `check contains {"about": c.id, "is_true": fact.any([c.isolated, fact.one_of(c.kind, ["pwm"])]), "because": "x"} if some c in input.controllers`, hut,
			[]string{"r controller.ridge: unproven, missing controller.ridge.isolated"}},
		{"does_not_apply", "banks", `check contains {"about": b.id, "does_not_apply": "there is one bank alone"} if some b in input.banks`, hut,
			[]string{"r bank.house: does_not_apply, because there is one bank alone"}},
		{"an empty collection", "supplies", `check contains {"about": s.id, "is_true": true, "because": "x"} if some s in input.supplies`, hut,
			[]string{"r system: does_not_apply, because the design has no supplies"}},
		{"a list behind one_of", "controllers", `check contains {"about": c.id, "is_true": fact.one_of(input.banks[0].system_voltage, c.bank_voltages), "because": "x"} if some c in input.controllers`,
			strings.Replace(hut, `kind               = "mppt"`, `kind = "mppt"`+"\n  bank_voltages = [\"12 V\", \"24 V\"]", 1),
			[]string{"r controller.ridge: meets"}},
		{"either takes the branch that counts", "controllers", `check contains {"about": c.id, "is": fact.either(fact.one_of(c.kind, ["mppt"]), c.charge_current_max, c.pv_current_max), "at_most": fact.number(70, "A")} if some c in input.controllers`, hut,
			[]string{"r controller.ridge: meets, spare 0 A, headroom 0.0000"}},
	} {
		t.Run(test.name, func(t *testing.T) {
			got := lines(verdicts(t, bookHead+rule("r", test.each, test.body), test.design))
			if diff := cmp.Diff(test.want, got); diff != "" {
				t.Errorf("verdicts (-want +got):\n%s", diff)
			}
		})
	}
}

// Every way in which a rule can fail is void at a place in the rule, none passes,
// and the rule beside it stands.
func TestVoid(t *testing.T) {
	const other = `check contains {"about": "site", "is": input.site.coldest, "at_least": fact.number(-30, "degC")}`
	const head = "book/r/rule.rego:"
	// What loading can see through is refused there: a function that hands on its
	// operand hides what the variable stands for.
	banks := func(record string) string {
		return "check contains " + record + " if some b in unseen(input.banks)\n\nunseen(x) := x"
	}
	// made is a record that loading cannot see into: what is written out in a
	// rule's head is refused there.
	made := func(record string) string {
		return "check contains made if {\n\tsome b in input.banks\n\tmade := " + record + "\n}"
	}
	for _, test := range []struct{ name, each, body, want string }{
		{"division by zero", "banks", banks(`{"about": b.id, "is": fact.ratio(b.nominal, fact.minus(b.nominal, b.nominal)), "at_most": 1}`),
			head + "13:38: fact.ratio: division by zero: bank.house.nominal - bank.house.nominal is 0"},
		{"an empty list", "banks", banks(`{"about": b.id, "is": fact.largest([p.rating | some p in b.protections]), "at_most": fact.number(1, "A")}`),
			head + "13:38: fact.largest: the list is empty"},
		{"beyond a table", "site", `check contains {"about": "site", "is": fact.lookup("ambient", [fact.number(61, "degC")]), "at_most": 1}`,
			head + `13:40: fact.lookup: table "ambient" has no row for ambient 61.0 degC: it goes from 30.0 degC to 60.0 degC`},
		{"units that do not add", "banks", banks(`{"about": b.id, "is": fact.plus([b.nominal, b.capacity]), "at_most": 1}`),
			head + "13:38: fact.plus: a voltage (bank.house.nominal) and a charge (bank.house.capacity) do not go together"},
		{"units that do not compare", "banks", banks(`{"about": b.id, "is": b.nominal, "at_most": b.capacity}`),
			head + "13:16: at_most: a voltage (bank.house.nominal) cannot be compared with a charge (bank.house.capacity)"},
		{"a temperature against a difference", "site", "check contains {\"about\": \"site\", \"is\": coldest(input.site), \"at_least\": fact.number(5, \"K\")}\n\ncoldest(x) := x.coldest",
			head + "13:16: at_least: a temperature (site.coldest) cannot be compared with a temperature difference"},
		{"twice a temperature", "site", "check contains {\"about\": \"site\", \"is\": fact.times([2, coldest(input.site)]), \"at_least\": fact.number(5, \"degC\")}\n\ncoldest(x) := x.coldest",
			head + "13:40: fact.times: a temperature cannot be multiplied: a temperature (site.coldest); take a difference first"},
		{"a word as a number", "banks", banks(`{"about": b.id, "is": fact.times([2, b.battery.chemistry]), "at_most": 1}`),
			head + "13:38: fact.times takes numbers, not a word (battery.fell.chemistry)"},
		{"a word that is a number", "banks", banks(`{"about": b.id, "is_true": fact.one_of(b.nominal, ["24 V"]), "because": "x"}`),
			head + `13:43: fact.one_of: a voltage (bank.house.nominal) is never "24 V"`},
		{"a unit that is none", "banks", banks(`{"about": b.id, "is": b.nominal, "at_most": fact.number(1, concat("", ["V", "olt"]))}`),
			head + `13:60: fact.number: "Volt" is not a unit`},
		{"a limit beyond all numbers", "banks", banks(`{"about": b.id, "is": b.nominal, "at_most": fact.number(1e308, concat("", ["k", "V"]))}`),
			head + `13:60: 1e308 kV is too large for a number`},
		{"a record about nobody", "banks", made(`{"is": b.nominal, "at_most": b.nominal}`),
			head + "15:10: a record names the subject that it is about"},
		{"an unknown key", "banks", made(`{"about": b.id, "is": b.nominal, "at_mots": b.nominal}`),
			head + `15:10: a record has no key "at_mots" (did you mean "at_most"?)`},
		{"two relations", "banks", made(`{"about": b.id, "is": b.nominal, "at_most": b.nominal, "at_least": b.nominal}`),
			head + "15:10: a record with is has one of at_most, at_least, equals, between; this one has at_most and at_least"},
		{"no relation", "banks", made(`{"about": b.id, "is": b.nominal}`),
			head + "15:10: a record with is has one of at_most, at_least, equals, between; this one has none"},
		{"nothing to judge", "banks", made(`{"about": b.id}`),
			head + "15:10: a record has one of is, all_equal, is_true, does_not_apply; this one has none"},
		{"no because", "banks", made(`{"about": b.id, "is_true": false}`),
			head + "15:10: is_true needs because: the words to show where it is not"},
		{"otherwise without when", "banks", made(`{"about": b.id, "is_true": false, "because": "x", "otherwise": "y"}`),
			head + "15:10: otherwise goes with when"},
		{"a template that is none", "banks", made(`{"about": b.id, "is_true": false, "because": "x", "say": "{it}"}`),
			head + "15:10: say: only {is}, {limit} and {about} are filled in"},
		{"a formula made by hand", "banks", banks(`{"about": b.id, "is": {"id": "bank.house.imagined", "unit": "V"}, "at_most": b.nominal}`),
			head + `13:16: there is no fact "bank.house.imagined"`},
		{"a whole subject", "banks", banks(`{"about": b.id, "is": b.battery, "at_most": b.nominal}`),
			head + `13:16: "battery.fell" is a whole subject: name one of its facts`},
		{"undefined", "banks", "check contains {\"about\": b.id, \"is_true\": f(b), \"because\": \"x\"} if some b in input.banks\n\nf(b) := true if count(b.protections) > 7",
			head + "11:1: the rule made no record about bank.house: it is undefined there"},
		{"two records that differ", "banks", "check contains {\"about\": b.id, \"is\": x, \"at_most\": b.nominal} if {\n\tsome b in input.banks\n\tsome x in [b.nominal, b.battery.nominal]\n}",
			head + "11:1: the rule made 2 records about bank.house that differ: tell them apart by which"},
		{"the engine's own division", "banks", "check contains {\"about\": b.id, \"is_true\": true, \"because\": \"x\"} if {\n\tsome b in input.banks\n\t1 / count(b.protections) > 0\n}",
			head + "15:2: div: divide by zero"},
		{"a conflict", "banks", "check contains {\"about\": b.id, \"is_true\": f(b), \"because\": \"x\"} if some b in input.banks\n\nf(b) := true if b.id\n\nf(b) := false if b.id",
			head + "17:1: two definitions of one function give different results: function data.codebooks.small.r.f produced conflicting values for the same inputs: true at book/r/rule.rego:15 false at book/r/rule.rego:17"},
		{"a value that is no number", "banks", "check contains {\"about\": b.id, \"is_true\": fact.value(b.battery.chemistry) > 1, \"because\": \"x\"} if some b in input.banks",
			head + "13:43: fact.value reads numbers, not a word (battery.fell.chemistry)"},
	} {
		t.Run(test.name, func(t *testing.T) {
			vs := verdicts(t, bookHead+tableData+rule("r", test.each, test.body)+rule("beside", "site", other), hut)
			got := lines(vs)
			about := map[string]string{"banks": "bank.house", "site": "site"}[test.each]
			want := []string{"beside site: meets, spare 3 K", "r " + about + ": void, " + test.want}
			if diff := cmp.Diff(want, got); diff != "" {
				t.Errorf("verdicts (-want +got):\n%s", diff)
			}
		})
	}
	t.Run("a sound record beside one about nobody", func(t *testing.T) {
		const both = `check contains {"about": "system", "is": fact.number(1, "V"), "at_most": fact.number(2, "V")}

check contains made if made := {"is": fact.number(3, "V"), "at_most": fact.number(2, "V")}`
		got := lines(verdicts(t, bookHead+rule("r", "system", both), hut))
		if diff := cmp.Diff([]string{"r system: void, " + head + "15:32: a record names the subject that it is about"}, got); diff != "" {
			t.Errorf("verdicts (-want +got):\n%s", diff)
		}
	})
	t.Run("between the ends of a table without a number", func(t *testing.T) {
		table := strings.NewReplacer("[40, 0.91], [60, 0.71]", "[60, 1.7e308]", "[30, 1.0]", "[30, -1.7e308]").Replace(tableData)
		got := lines(verdicts(t, bookHead+table+rule("r", "system", `check contains {"about": "system", "is": 5, "at_most": fact.interpolate("ambient", [fact.number(45, "degC")])}`), hut))
		if diff := cmp.Diff([]string{"r system: void, " + head + "13:56: fact.interpolate: the result is too large for a number"}, got); diff != "" {
			t.Errorf("verdicts (-want +got):\n%s", diff)
		}
	})
	t.Run("outside an empty collection, reading an unknown", func(t *testing.T) {
		got := lines(verdicts(t, bookHead+rule("r", "supplies", "check contains made if {\n\tsome p in input.panels\n\tnot low(p)\n\tmade := {\"about\": p.id, \"is_true\": true, \"because\": \"x\"}\n}\n\nlow(p) if fact.value(p.max_system_voltage) < 600"), hut))
		if diff := cmp.Diff([]string{"r panel.slate: void, " + head + `11:1: a record is about "panel.slate", which is none of supplies`}, got); diff != "" {
			t.Errorf("verdicts (-want +got):\n%s", diff)
		}
	})
	t.Run("about another collection", func(t *testing.T) {
		got := lines(verdicts(t, bookHead+rule("r", "banks", "check contains made if {\n\tsome c in input.chargers\n\tmade := {\"about\": c.id, \"is_true\": true, \"because\": \"x\"}\n}"), hut))
		want := []string{
			"r bank.house: void, " + head + "11:1: the rule made no record about bank.house: it is undefined there",
			"r charger.main: void, " + head + `11:1: a record is about "charger.main", which is none of banks`,
		}
		if diff := cmp.Diff(want, got); diff != "" {
			t.Errorf("verdicts (-want +got):\n%s", diff)
		}
	})
}

// A fact whose method has no answer makes a rule that reads it by itself unproven,
// although nothing is missing.
func TestValueWithoutAnswer(t *testing.T) {
	const body = `check contains {"about": b.id, "is_true": true, "because": "x"} if {
	some b in input.banks
	not fact.value(b.system_voltage) < 20
}`
	got := lines(verdicts(t, bookHead+rule("r", "banks", body), strings.Replace(hut, `"25.6 V"`, `"30 V"`, 1)))
	want := []string{"r bank.house: unproven, because system voltage: 30 V is within -8 to +10 % of none of 12, 24, 36 and 48 V"}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("verdicts (-want +got):\n%s", diff)
	}
}

// An unknown that a rule reads by itself makes the rule unproven, also where
// `not` turns the silence into a yes.
func TestValue(t *testing.T) {
	const body = `check contains {"about": p.id, "is_true": true, "because": "x"} if {
	some p in input.panels
	not fact.value(p.max_system_voltage) < 600
}`
	given := strings.Replace(hut, "cells    = 54", "cells = 54\n  max_system_voltage = \"1 kV\"", 1)
	for _, test := range []struct {
		name, design string
		want         []string
	}{
		{"unknown", hut, []string{"r panel.slate: unproven, missing panel.slate.max_system_voltage"}},
		{"known", given, []string{"r panel.slate: meets"}},
		{"known, the other way", strings.Replace(given, "1 kV", "500 V", 1), []string{"r panel.slate: void, book/r/rule.rego:11:1: the rule made no record about panel.slate: it is undefined there"}},
	} {
		t.Run(test.name, func(t *testing.T) {
			got := lines(verdicts(t, bookHead+rule("r", "panels", body), test.design))
			if diff := cmp.Diff(test.want, got); diff != "" {
				t.Errorf("verdicts (-want +got):\n%s", diff)
			}
		})
	}
	t.Run("one judge, two designs of one structure", func(t *testing.T) {
		j := judge.New(judge.Options{Books: []*judge.Book{loaded(t, bookHead+rule("r", "panels", body))}})
		for _, want := range []string{"unproven", "meets", "unproven"} {
			text := hut
			if want == "meets" {
				text = given
			}
			vs, err := j.Judge(context.Background(), system(t, text))
			if err != nil || string(vs[0].Outcome) != want {
				t.Errorf("%v, %v; want %s", lines(vs), err, want)
			}
		}
	})
	t.Run("behind a shared function", func(t *testing.T) {
		shared := "-- shared/lib.rego --\npackage codebooks.small.shared\n\nhigh(p) if fact.value(p.max_system_voltage) >= 600\n"
		got := lines(verdicts(t, bookHead+shared+rule("r", "panels", "import data.codebooks.small.shared\n\ncheck contains {\"about\": p.id, \"is_true\": true, \"because\": \"x\"} if {\n\tsome p in input.panels\n\tnot shared.high(p)\n}"), hut))
		if diff := cmp.Diff([]string{"r panel.slate: unproven, missing panel.slate.max_system_voltage"}, got); diff != "" {
			t.Errorf("verdicts (-want +got):\n%s", diff)
		}
	})
}

// The same judge serves many goroutines, each with a system of its own, and the
// verdicts are the same to the last byte.
func TestConcurrentAndRepeatable(t *testing.T) {
	book := loaded(t, withParameter+rule("r", "pv_inputs", `check contains {"about": i.id, "is": i.voc_cold, "at_most": fact.times([input.params.cold_share, i.controller.pv_voltage_max])} if some i in input.pv_inputs`)+
		rule("v", "panels", "check contains {\"about\": p.id, \"is\": fact.number(fact.value(p.voc), \"V\"), \"at_most\": fact.number(40, \"V\")} if some p in input.panels"))
	j := judge.New(judge.Options{Books: []*judge.Book{book}})
	want := ""
	var mutex sync.Mutex
	var wait sync.WaitGroup
	for range 16 {
		s := system(t, hut)
		wait.Go(func() {
			vs, err := j.Judge(context.Background(), s)
			got := fmt.Sprintf("%v %v", strings.Join(lines(vs), "\n"), err)
			mutex.Lock()
			defer mutex.Unlock()
			if want == "" {
				want = got
			}
			if got != want {
				t.Errorf("%s\n%s", got, want)
			}
		})
	}
	wait.Wait()
	if !strings.Contains(want, "v panel.slate: meets, spare 2.6 V") {
		t.Error(want)
	}
}

func TestCanceled(t *testing.T) {
	j := judge.New(judge.Options{Books: []*judge.Book{loaded(t, bookHead+rule("r", "banks", `check contains {"about": b.id, "is_true": true, "because": "x"} if some b in input.banks`))}})
	ctx, cancel := context.WithCancel(context.Background())
	cancel()
	if vs, err := j.Judge(ctx, system(t, hut)); !errors.Is(err, context.Canceled) || vs != nil {
		t.Errorf("%v, %v", lines(vs), err)
	}
}
