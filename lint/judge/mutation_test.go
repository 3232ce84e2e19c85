package judge_test

import (
	"context"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint/judge"
)

// tested runs the tests of the small codebook with one file exchanged.
func tested(t *testing.T, o judge.TestOptions, changes map[string]string) *judge.TestReport {
	t.Helper()
	files := testedBook()
	for name, text := range changes {
		files[name] = text
	}
	archive := ""
	for name, text := range files {
		archive += "-- " + name + " --\n" + text
	}
	report, problems, err := judge.Test(context.Background(), judge.Source{Files: folder(archive), Show: "book"}, o)
	if err != nil || len(problems) > 0 {
		t.Fatal(err, problems)
	}
	return report
}

func bodyOf(each, body string) string {
	return strings.TrimPrefix(rule("r", each, body), "-- r/rule.rego --\n")
}

// TestMutants holds each operator to a rule in which it has something to do, with
// the name that a mutant is reported by. What is listed is all that there is.
func TestMutants(t *testing.T) {
	for _, test := range []struct {
		name, each, body string
		want             []string
	}{
		{"at most", "pv_inputs", `check contains {"about": i.id, "is": i.voc_cold, "at_most": i.controller.pv_voltage_max} if some i in input.pv_inputs`,
			[]string{"is and at_most exchanged", "i.voc_cold to i.voc_headroom", "at_most to at_least", "i.controller.pv_voltage_max to i.controller.pv_voltage_max_25", "without some i in input.pv_inputs"}},
		{"at least, and a constant", "pv_inputs", `check contains {"about": i.id, "is": i.controller.pv_voltage_max, "at_least": fact.times([1.02, i.voc_cold])} if some i in input.pv_inputs`,
			[]string{"is and at_least exchanged", "i.controller.pv_voltage_max to i.controller.pv_voltage_max_25", "at_least to at_most",
				"without factor 1.02", "1.02 x 1.01", "1.02 / 1.01", "without factor i.voc_cold", "i.voc_cold to i.voc_headroom", "without some i in input.pv_inputs"}},
		{"between, when and its otherwise", "banks", `check contains {"about": b.id, "when": fact.more_than(b.parallel, 1), "otherwise": "one", "is": b.system_voltage, "between": [fact.number(12, "V"), fact.number(48, "V")]} if some b in input.banks`,
			[]string{"without when", "sides of fact.more_than exchanged", "b.parallel to b.cells_in_series", "1 x 1.01", "1 / 1.01",
				"is and lower limit exchanged", "is and upper limit exchanged", "b.system_voltage to b.bulk_voltage_per_cell",
				"12 x 1.01", "12 / 1.01", "48 x 1.01", "48 / 1.01", "without some b in input.banks"}},
		{"expressions, of a body and of a comprehension", "strings", `check contains {"about": s.id, "is": fact.number(count([p | some p in input.protections; p.id == s.id]), ""), "equals": fact.number(0, "")} if {
	some s in input.strings
	count(s.panels) > 0
}

check contains {"about": s.id, "does_not_apply": "no panels"} if {
	some s in input.strings
	count(s.panels) == 0
}`, []string{"without some p in input.protections", "without p.id == s.id", "without some s in input.strings", "without count(s.panels) > 0",
			"without some s in input.strings #2", "without count(s.panels) == 0"}},
		{"a function's operand is known from its call", "strings", `check contains {"about": s.id, "is_true": f(s), "because": "x"} if some s in input.strings

f(x) := fact.at_least(x.isc_max, x.isc_stc)`,
			[]string{"without some s in input.strings", "sides of fact.at_least exchanged", "x.isc_max to x.isc_stc", "x.isc_stc to x.imp_stc"}},
	} {
		t.Run(test.name, func(t *testing.T) {
			report := tested(t, judge.TestOptions{Mutation: true}, map[string]string{"r/rule.rego": bodyOf(test.each, test.body)})
			var got []string
			for _, m := range report.Mutants {
				got = append(got, m.Name)
				if m.Rule != "r" || m.At.File != "book/r/rule.rego" || m.At.Start.Line < 13 {
					t.Errorf("%s stands at %s of %s", m.Name, m.At, m.Rule)
				}
			}
			if diff := cmp.Diff(test.want, got); diff != "" {
				t.Errorf("mutants (-want +got):\n%s", diff)
			}
		})
	}
}

// TestNoticed tells who notices: the load refuses what does not compile, an
// example what turns its verdict, a Rego test what only its figures tell.
func TestNoticed(t *testing.T) {
	const body = `check contains {"about": i.id, "is": fact.times([1.01, i.voc_cold]), "at_most": i.controller.pv_voltage_max} if some i in input.pv_inputs`
	exact := strings.NewReplacer(`"150 V"`, `"148.5148 V"`, `"150.1 V"`, `"148.5149 V"`, `"112.2 V"`, `"113.322 V"`)
	both := map[string]string{"common.parts.hcl": strings.Replace(testedBook()["common.parts.hcl"], "  pv_voltage_max     = \"150 V\"", "  pv_voltage_max     = \"150 V\"\n  pv_voltage_max_25  = \"140 V\"", 1),
		"r/rule.rego": bodyOf("pv_inputs", body), "r/rule_test.rego": exact.Replace(testedBook()["r/rule_test.rego"])}
	report := tested(t, judge.TestOptions{Mutation: true}, both)
	if failed := report.Failed(); len(failed) > 0 {
		t.Fatal(report)
	}
	by := map[string]string{}
	for _, m := range report.Mutants {
		by[m.Name] = m.Caught
	}
	want := map[string]string{
		"is and at_most exchanged": "example", "at_most to at_least": "example", "without some i in input.pv_inputs": "load",
		"i.voc_cold to i.voc_headroom": "example", "without factor i.voc_cold": "load", "without factor 1.01": "Rego test",
		"1.01 x 1.01": "Rego test", "1.01 / 1.01": "Rego test",
		"i.controller.pv_voltage_max to i.controller.pv_voltage_max_25": "Rego test",
	}
	if diff := cmp.Diff(want, by); diff != "" {
		t.Errorf("noticed by (-want +got):\n%s", diff)
	}

	// Without the cases at the limit, the constant and the factor are free.
	thin := strings.NewReplacer(`"at it": {"facts": {"pv_input.main.1.voc_cold": "148.5148 V"}, "verdict": "meets"},`, "",
		`"above it": {"facts": {"pv_input.main.1.voc_cold": "148.5149 V"}, "verdict": "breaks"},`, "",
		`"a warmer place": {"facts": {"site.coldest": "25 degC", "controller.ridge.pv_voltage_max": "113.322 V"}, "verdict": "meets"},`, "")
	both["r/rule_test.rego"] = thin.Replace(both["r/rule_test.rego"])
	report = tested(t, judge.TestOptions{Mutation: true}, both)
	var free []string
	for _, m := range report.Survivors() {
		free = append(free, m.Name)
	}
	if diff := cmp.Diff([]string{"without factor 1.01", "1.01 x 1.01", "1.01 / 1.01", "i.controller.pv_voltage_max to i.controller.pv_voltage_max_25"}, free); diff != "" {
		t.Errorf("noticed by nobody (-want +got):\n%s", diff)
	}
	if !strings.Contains(report.Error(), "book/r/rule.rego:13:50: r: nobody notices the mutant: 1.01 x 1.01") {
		t.Errorf("the report says:\n%s", report.Error())
	}
}

// TestBrokenTestNoticesNothing: Rego tests that give an error on the rule as it
// is give one on every mutant too, which is no notice.
func TestBrokenTestNoticesNothing(t *testing.T) {
	text := strings.Replace(testedBook()["r/rule_test.rego"], `"panel.slate.temp_voc"`, `"panel.slate.temp_voice"`, 1)
	report := tested(t, judge.TestOptions{Mutation: true}, map[string]string{"r/rule_test.rego": text})
	if len(report.Failed()) == 0 || len(report.Mutants) == 0 {
		t.Fatalf("%d failures, %d mutants", len(report.Failed()), len(report.Mutants))
	}
	for _, m := range report.Mutants {
		if m.Caught == "Rego test" {
			t.Errorf("%s is noticed: %s", m.Name, m.Detail)
		}
	}
	if len(report.Survivors()) == 0 {
		t.Error("no mutant lives")
	}
}

// TestEquivalent: a mutant that is listed with its reason may pass; one that is
// noticed, or that does not exist, is a finding.
func TestEquivalent(t *testing.T) {
	list := func(lines string) map[string]string {
		text := strings.Replace(bodyOf("pv_inputs", `check contains {"about": i.id, "when": fact.more_than(i.parallel_strings, 0.5), "is": i.voc_cold, "at_most": i.controller.pv_voltage_max} if some i in input.pv_inputs`),
			"package codebooks.small.r\n", lines+"package codebooks.small.r\n", 1)
		return map[string]string{"r/rule.rego": text}
	}
	say := func(report *judge.TestReport) (found []string) {
		for _, r := range report.Failed() {
			if r.Name == "equivalent" {
				found = append(found, r.At.String()+": "+r.Message)
			}
		}
		for _, m := range report.Mutants {
			if m.Reason != "" {
				found = append(found, m.Name+" is the same: "+m.Reason)
			}
		}
		return found
	}
	for _, test := range []struct {
		name, lines string
		want        []string
	}{
		{"listed", "#   equivalent:\n#     - mutant: 0.5 x 1.01\n#       reason: strings are whole\n", []string{"0.5 x 1.01 is the same: strings are whole"}},
		{"noticed after all", "#   equivalent:\n#     - mutant: at_most to at_least\n#       reason: it looked so\n",
			[]string{`book/r/rule.rego:11:5: the mutant "at_most to at_least" is listed as equivalent, but it is noticed: meets: expected: meets small.r on pv_input.main.1; breaks`}},
		{"of no such name", "#   equivalent:\n#     - mutant: 0.5 x 1.1\n#       reason: strings are whole\n",
			[]string{`book/r/rule.rego:11:5: no mutant is named "0.5 x 1.1"; did you mean "0.5 x 1.01"?`}},
	} {
		t.Run(test.name, func(t *testing.T) {
			got := say(tested(t, judge.TestOptions{Mutation: true}, list(test.lines)))
			if diff := cmp.Diff(test.want, got); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}

// TestTestOptions: rules can be chosen by name; one that is not there is an error
// and not a clean run.
func TestTestOptions(t *testing.T) {
	report := tested(t, judge.TestOptions{Rules: []string{"r"}, Coverage: true}, nil)
	if report.Rules != 1 || len(report.Results) != 8 || len(report.Mutants) != 0 {
		t.Errorf("%d rules, %d results, %d mutants", report.Rules, len(report.Results), len(report.Mutants))
	}
	if diff := cmp.Diff([]judge.Coverage{{Rule: "r", Reached: 1, Total: 1}}, report.Coverage); diff != "" {
		t.Errorf("coverage (-want +got):\n%s", diff)
	}
	archive := ""
	for name, text := range testedBook() {
		archive += "-- " + name + " --\n" + text
	}
	_, _, err := judge.Test(context.Background(), judge.Source{Files: folder(archive), Show: "book"}, judge.TestOptions{Rules: []string{"rr"}})
	if err == nil || !strings.Contains(err.Error(), `codebook small has no rule "rr"`) {
		t.Errorf("a rule that is not there: %v", err)
	}
	gone, stop := context.WithCancel(context.Background())
	stop()
	if _, _, err := judge.Test(gone, judge.Source{Files: folder(archive), Show: "book"}, judge.TestOptions{Mutation: true}); err == nil {
		t.Error("a run that was stopped gives a report")
	}
}

// TestCoverage: an expression that no Rego test reaches is named with its place.
func TestCoverage(t *testing.T) {
	report := tested(t, judge.TestOptions{Coverage: true}, map[string]string{"r/rule.rego": bodyOf("pv_inputs", `check contains {"about": i.id, "is": i.voc_cold, "at_most": i.controller.pv_voltage_max} if some i in input.pv_inputs

check contains {"about": i.id, "does_not_apply": "x"} if {
	some i in input.pv_inputs
	i.id == ""
	i.id == "never"
}`)})
	if len(report.Coverage) != 1 {
		t.Fatalf("%d rules are covered", len(report.Coverage))
	}
	c := report.Coverage[0]
	var missed []int
	for _, m := range c.Missed {
		missed = append(missed, m.Start.Line)
	}
	if diff := cmp.Diff([]int{15, 18}, missed); diff != "" || c.Total != c.Reached+2 {
		t.Errorf("%d of %d reached; missed lines (-want +got):\n%s", c.Reached, c.Total, diff)
	}
}

// TestMutantsOfOddRules: whatever a rule that loads is made of, its mutants can
// be made and tried: each is noticed or lives, none stops the run.
func TestMutantsOfOddRules(t *testing.T) {
	for _, test := range []struct{ name, body string }{
		{"else", "check contains {\"about\": i.id, \"is\": f(i), \"at_most\": fact.number(150, \"V\")} if some i in input.pv_inputs\n\nf(i) := i.voc_cold if count(input.strings) > 3 else := i.voc_stc if count(input.strings) > 2 else := i.vmp_stc"},
		{"every, not, sets and objects", `check contains {"about": i.id, "is_true": true, "because": "x"} if {
	some n, i in input.pv_inputs
	every s in input.strings {
		count(s.panels) > 0
		not s.id in {"string.a.b", "string.c.d"}
	}
	{"a": 1.5}["a"] > 1
	{p.id: 2 | some p in input.panels}[input.panels[0].id] + n == 2
	count({q | some q in input.panels; q.id != ""}) > 0
}`},
		{"a record made in pieces", "check contains made if {\n\tsome i in input.pv_inputs\n\tlimit := fact.largest([fact.number(150, \"V\"), fact.times([2, 3, i.controller.pv_voltage_max])])\n\tmade := {\"about\": i.id, \"is\": i.voc_cold, \"at_most\": limit}\n}"},
		{"paths with brackets and indices", `check contains {"about": i.id, "is": input["pv_inputs"][n]["voc_cold"], "at_most": fact.number(150, "V")} if some n, i in input.pv_inputs`},
		{"negative and tiny numbers", `check contains {"about": i.id, "is": i.voc_cold, "at_most": fact.plus([fact.number(-1.5e-9, "V"), fact.number(150, "V")])} if some i in input.pv_inputs`},
		{"a function of another name for its operand", "check contains {\"about\": i.id, \"is_true\": g(i.controller, [i]), \"because\": \"x\"} if some i in input.pv_inputs\n\ng(c, [x]) := fact.all([fact.at_least(c.pv_voltage_max, x.voc_cold), fact.one_of(c.kind, [\"mppt\", \"pwm\"])])"},
	} {
		t.Run(test.name, func(t *testing.T) {
			report := tested(t, judge.TestOptions{Mutation: true, Coverage: true}, map[string]string{"r/rule.rego": bodyOf("pv_inputs", test.body)})
			if len(report.Mutants) < 3 {
				t.Errorf("only %d mutants", len(report.Mutants))
			}
			names := map[string]bool{}
			for _, m := range report.Mutants {
				if names[m.Name] || m.Name == "" {
					t.Errorf("two mutants have the name %q", m.Name)
				}
				names[m.Name] = true
			}
		})
	}
}
