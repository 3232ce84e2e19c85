package judge_test

import (
	"context"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint/judge"
)

// testedBook is a codebook with tests of its own: a rule on cold voltage.
func testedBook() map[string]string {
	common, parts := split(hut)
	return map[string]string{
		"codebook.hcl":      strings.TrimPrefix(bookHead, "\n-- codebook.hcl --\n"),
		"common.design.hcl": common,
		"common.parts.hcl":  parts,
		"r/rule.rego": strings.TrimPrefix(rule("r", "pv_inputs",
			`check contains {"about": i.id, "is": i.voc_cold, "at_most": i.controller.pv_voltage_max} if some i in input.pv_inputs`), "-- r/rule.rego --\n"),
		"r/meets.design.hcl": "# expect: meets small.r on pv_input.main.1\n",
		"r/breaks.design.hcl": `# expect: breaks small.r on pv_input.main.1
array "south" {
  charger = "main"
  string "a" {
    panels = { "slate" = 4 }
  }
}
`,
		"r/rule_test.rego": `package codebooks.small.r_test

import data.codebooks.small.r

test_limit[name] if {
	some name, c in {
		"at it": {"facts": {"pv_input.main.1.voc_cold": "150 V"}, "verdict": "meets"},
		"above it": {"facts": {"pv_input.main.1.voc_cold": "150.1 V"}, "verdict": "breaks"},
		"unknown": {"facts": {"panel.slate.temp_voc": null}, "verdict": "unproven"},
		"a warmer place": {"facts": {"site.coldest": "25 degC", "controller.ridge.pv_voltage_max": "112.2 V"}, "verdict": "meets"},
	}
	system := test.facts("meets")
	vs := test.verdicts(system, r.check, c.facts) with input as system
	[v.verdict | some v in vs] == [c.verdict]
}
`,
	}
}

// split parts a design into its system and its data sheets.
func split(text string) (system, parts string) {
	for _, block := range strings.SplitAfter(text, "\n}\n") {
		if k, _, _ := strings.Cut(strings.TrimLeft(block, "\n"), " "); k == "panel" || k == "controller" || k == "battery" {
			parts += block
		} else {
			system += block
		}
	}
	return system, parts
}

func TestBookTests(t *testing.T) {
	for _, test := range []struct {
		name, file, old, new string
		want                 []string // what fails: rule, test, and a part of the message
	}{
		{"sound", "", "", "", nil},
		{"a wrong limit in the rule", "r/rule.rego", "i.voc_cold", "i.voc_stc", []string{
			"breaks: expected: breaks small.r on pv_input.main.1; it meets", "breaks: the design that breaks: small.r breaks nowhere",
			"test_limit: above it: the case is not true", "test_limit: unknown"}},
		{"the wrong way round", "r/rule.rego", "at_most", "at_least", []string{"meets: expected: meets small.r on pv_input.main.1; breaks", "meets: the design that meets: small.r on pv_input.main.1 breaks",
			"breaks: expected: breaks small.r on pv_input.main.1; it meets", "breaks: the design that breaks: small.r breaks nowhere", "test_limit: above it"}},
		{"a design that does not break", "r/breaks.design.hcl", "= 4", "= 3", []string{"breaks: expected: breaks small.r on pv_input.main.1; it meets", "breaks: the design that breaks: small.r breaks nowhere"}},
		{"an expectation on nobody", "r/meets.design.hcl", "main.1", "main.2", []string{"meets: expected: meets small.r on pv_input.main.2; there is no such verdict; did you mean \"pv_input.main.1\"?"}},
		{"an expectation that cannot be read", "r/meets.design.hcl", "expect: meets", "expect: meet", []string{"meets: line 1: an expectation reads"}},
		{"a design that does not load", "r/breaks.design.hcl", "charger", "chargre", []string{"breaks: the design has problems:\nbook/r/breaks.design.hcl:2:1: "}},
		{"a common design that does not load", "common.design.hcl", `series   = 1`, `series = 0`, []string{"meets: the design has problems:\nbook/common.design.hcl:8:"}},
		{"a fact that is none", "r/rule_test.rego", "site.coldest", "site.coldst", []string{`test_limit: test.verdicts: there is no fact "site.coldst" in the example (did you mean "site.coldest"?)`}},
		{"a value of another unit", "r/rule_test.rego", `"150 V"`, `"150 A"`, []string{"test_limit: test.verdicts: pv_input.main.1.voc_cold: "}},
		{"a test that expects what is not", "r/rule_test.rego", `"150.1 V"`, `"149 V"`, []string{"test_limit: above it: the case is not true"}},
		{"no test in the file", "r/rule_test.rego", "test_limit", "tset_limit", []string{"rule_test.rego: the file has no rule test_*"}},
		{"a package that is not the rule's", "r/rule_test.rego", "small.r_test", "small.q_test", []string{"rule_test.rego: the package is codebooks.small.r_test"}},
		{"an example of no name", "r/rule_test.rego", `facts("meets")`, `facts("meet")`, []string{`test_limit: book/r/rule_test.rego:12:12: there is no example "meet" that loads`}},
		{"an import of another rule", "r/rule_test.rego", "import data.codebooks.small.r", "import data.codebooks.small.q", []string{"rule_test.rego: a test imports its own rule, data.codebooks.small.r, and shared/; not data.codebooks.small.q"}},
		{"a test function that is none", "r/rule_test.rego", "test.verdicts(", "test.verdict(", []string{`rule_test.rego: there is no function test.verdict for rules; did you mean "test.verdicts"?`}},
		{"an expectation of another rule", "r/meets.design.hcl", "small.r on", "small.rr on", []string{`meets: expected: meets small.rr on pv_input.main.1; there is no such verdict; did you mean "small.r"?`}},
		{"a parameter that no rule reads", "codebook.hcl", `name    = "small"`, "name    = \"small\"\nparameter \"drop\" {\n  kind = \"quantity\"\n  unit = \"%\"\n  default = \"2 %\"\n  means = \"x\"\n}", []string{`codebook.hcl: no rule reads the parameter "drop"`}},
		{"an attribute that no rule reads", "codebook.hcl", `name    = "small"`, "name    = \"small\"\nattribute \"vented\" {\n  of = \"banks\"\n  kind = \"yes_no\"\n  means = \"x\"\n}", []string{`codebook.hcl: no rule reads the attribute "vented" that designs are asked for`}},
		{"no file at all", "r/rule_test.rego", "", "", []string{"rule_test.rego: reading the test:"}},
	} {
		t.Run(test.name, func(t *testing.T) {
			files := testedBook()
			switch {
			case test.file != "" && test.old == "":
				delete(files, test.file)
			case test.file != "":
				if !strings.Contains(files[test.file], test.old) {
					t.Fatalf("%s has no %q", test.file, test.old)
				}
				files[test.file] = strings.Replace(files[test.file], test.old, test.new, 1)
			}
			archive := ""
			for name, text := range files {
				archive += "-- " + name + " --\n" + text
			}
			report, problems, err := judge.Test(context.Background(), judge.Source{Files: folder(archive), Show: "book"}, judge.TestOptions{})
			if err != nil || len(problems) > 0 {
				t.Fatal(err, problems)
			}
			var failed []string
			for _, r := range report.Failed() {
				failed = append(failed, r.Name+": "+r.Message)
				if !r.At.Valid() {
					t.Errorf("no place: %+v", r)
				}
			}
			for i, want := range test.want {
				if i < len(failed) && strings.HasPrefix(failed[i], want) {
					failed[i] = want
				}
			}
			if strings.HasSuffix(test.name, "that does not load") && len(failed) > 0 {
				failed, test.want = failed[:1], test.want[:1]
			}
			if diff := cmp.Diff(test.want, failed); diff != "" {
				t.Errorf("failures (-want +got):\n%s", diff)
			}
		})
	}
}

// Deletion accepts what is said aloud and finds what is taken in silence: a
// panel's bifacial current stands in for the other where it is larger, and
// without it the fact falls back, naming nothing.
func TestDeletion(t *testing.T) {
	const record = `{"about": i.id, "is": i.voc_cold, "at_most": i.controller.pv_voltage_max} if some i in input.pv_inputs`
	for _, test := range []struct {
		name, record string
		want         []string
	}{
		{"sound", record, []string{"deletion of meets: passed", "deletion of breaks: passed"}},
		{"a rule that reads values", `{"about": i.id, "which": "value", "is": fact.number(fact.value(i.voc_cold), "V"), "at_most": fact.number(150, "V")} if some i in input.pv_inputs`,
			[]string{"deletion of meets: passed", "deletion of breaks: passed"}},
		{"a stand-in", `{"about": i.id, "is": i.isc_stc, "at_most": fact.number(21, "A")} if some i in input.pv_inputs`,
			[]string{"deletion: meets design, small.r pv_input.main.1: without panel.slate.isc_bifacial it meets", "deletion: breaks design, small.r pv_input.main.1: without panel.slate.isc_bifacial it meets"}},
	} {
		t.Run(test.name, func(t *testing.T) {
			files := testedBook()
			files["r/rule.rego"] = strings.Replace(files["r/rule.rego"], record, test.record, 1)
			files["common.parts.hcl"] = strings.Replace(files["common.parts.hcl"], "  imp ", "  isc_bifacial = \"20 A\"\n  imp ", 1)
			archive := ""
			for name, text := range files {
				archive += "-- " + name + " --\n" + text
			}
			report, problems, err := judge.Test(context.Background(), judge.Source{Files: folder(archive), Show: "book"}, judge.TestOptions{})
			if err != nil || len(problems) > 0 {
				t.Fatal(err, problems)
			}
			var got []string
			for _, r := range report.Results {
				switch {
				case !strings.HasPrefix(r.Name, "deletion"):
				case r.Passed:
					got = append(got, r.Name+": passed")
				default:
					got = append(got, r.Name+": "+r.Message)
				}
			}
			if diff := cmp.Diff(test.want, got); diff != "" {
				t.Errorf("deletion (-want +got):\n%s", diff)
			}
		})
	}
}

// Tests put values into the examples and take them out again: a second run finds
// what the first found.
func TestTestingLeavesTheDesignAlone(t *testing.T) {
	archive := ""
	for name, text := range testedBook() {
		archive += "-- " + name + " --\n" + text
	}
	src := judge.Source{Files: folder(archive), Show: "book"}
	first, _, _ := judge.Test(context.Background(), src, judge.TestOptions{})
	second, _, _ := judge.Test(context.Background(), src, judge.TestOptions{})
	if diff := cmp.Diff(first, second); diff != "" {
		t.Errorf("two runs:\n%s", diff)
	}
	if n := len(first.Results); n != 9 {
		t.Errorf("%d results, want 9: meets, breaks, deletion of each, what is declared, four cases", n)
	}
}

// One test that does not compile keeps none of the other rules' from running.
func TestOneTestThatDoesNotCompile(t *testing.T) {
	files := testedBook()
	for _, name := range []string{"rule.rego", "rule_test.rego", "meets.design.hcl", "breaks.design.hcl"} {
		files["q/"+name] = strings.ReplaceAll(strings.ReplaceAll(files["r/"+name], "small.r", "small.q"), "r.check", "q.check")
	}
	files["q/rule_test.rego"] = strings.Replace(files["q/rule_test.rego"], "test.verdicts(", "test.verdict(", 1)
	archive := ""
	for name, text := range files {
		archive += "-- " + name + " --\n" + text
	}
	report, problems, err := judge.Test(context.Background(), judge.Source{Files: folder(archive), Show: "book"}, judge.TestOptions{Coverage: true})
	if err != nil || len(problems) > 0 {
		t.Fatal(err, problems)
	}
	passed := map[string]int{}
	for _, r := range report.Results {
		if r.Passed && strings.HasPrefix(r.Name, "test_limit") {
			passed[r.Rule]++
		}
	}
	if diff := cmp.Diff(map[string]int{"r": 4}, passed); diff != "" {
		t.Errorf("cases that passed (-want +got):\n%s", diff)
	}
	if failed := report.Failed(); len(failed) != 1 || failed[0].Rule != "q" || !strings.HasPrefix(failed[0].Message, "there is no function test.verdict for rules") {
		t.Errorf("failed: %v", failed)
	}
}
