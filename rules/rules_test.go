package rules_test

import (
	"context"
	"io/fs"
	"os"
	"path"
	"runtime/debug"
	"slices"
	"strings"
	"testing"

	"stringline/lint/facts"
	"stringline/lint/judge"
	"stringline/lint/verdict"
	"stringline/rules"
	"stringline/schema/design"
)

// TestMain lets the collector work rarely, as the program does: thousands of
// small compilations leave much behind.
func TestMain(m *testing.M) {
	debug.SetGCPercent(400)
	os.Exit(m.Run())
}

// TestBooks runs every embedded codebook's own tests: the Rego tests, the two
// example designs of each rule with their expectations, deletion (without any
// attribute that a verdict relied on, that verdict is not a pass), and mutation:
// somebody notices each small mistake that is put into a rule. Under -short the
// mistakes are left out.
func TestBooks(t *testing.T) {
	for name, files := range books(t) {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			mutation := !testing.Short() && (!underRace || name == "practice")
			report, problems, err := judge.Test(context.Background(), judge.Source{Name: name, Files: files, Show: "rules/" + name, Embedded: true}, judge.TestOptions{Mutation: mutation, Coverage: true})
			if err != nil {
				t.Fatal(err)
			}
			for _, p := range problems {
				t.Errorf("loading: %s: %s", p.At, p.Message)
			}
			if report == nil {
				return
			}
			if len(report.Results) == 0 {
				t.Error("no test ran")
			}
			for _, r := range report.Failed() {
				t.Errorf("%s: %s: %s: %s", r.At, r.Rule, r.Name, r.Message)
			}
			caught := map[string]int{}
			for i := range report.Mutants {
				m := &report.Mutants[i]
				if m.Survived() {
					t.Errorf("%s: %s: nobody notices the mutant: %s", m.At, m.Rule, m.Name)
				}
				switch {
				case m.Survived():
					caught["nobody"]++
				case m.Reason != "":
					caught["equivalent"]++
				default:
					caught[m.Caught]++
				}
			}
			if len(report.Mutants) < 3*report.Rules && mutation {
				t.Errorf("only %d mutants of %d rules", len(report.Mutants), report.Rules)
			}
			for _, c := range report.Coverage {
				if len(c.Missed) > 0 {
					t.Errorf("%s: no Rego test reaches %v", c.Rule, c.Missed)
				}
			}
			t.Logf("%d mutants: %v", len(report.Mutants), caught)
		})
	}
}

// books gives the embedded codebooks by name.
func books(t *testing.T) map[string]fs.FS {
	t.Helper()
	entries, err := fs.ReadDir(rules.Books, ".")
	if err != nil {
		t.Fatal(err)
	}
	found := map[string]fs.FS{}
	for _, e := range entries {
		if found[e.Name()], err = fs.Sub(rules.Books, e.Name()); err != nil {
			t.Fatal(err)
		}
	}
	return found
}

// structural are the rules that only count blocks: whether a block is there is
// never unknown, so none of their verdicts can be unproven.
var structural = []string{
	"limits/ac_output_protection", "limits/array_conductor", "limits/array_disconnect", "limits/bank_disconnect",
	"limits/bank_protection", "limits/charger_protection", "limits/source_protection", "limits/supply_protection",
}

// TestCases holds that every rule's Rego tests ask for a pass, a finding and,
// where a fact can be unknown, an unproven verdict.
func TestCases(t *testing.T) {
	for book, files := range books(t) {
		tests, err := fs.Glob(files, "*/rule_test.rego")
		if err != nil || len(tests) == 0 {
			t.Fatalf("%s: no Rego tests: %v", book, err)
		}
		for _, name := range tests {
			text, err := fs.ReadFile(files, name)
			if err != nil {
				t.Fatal(err)
			}
			rule := book + "/" + path.Dir(name)
			for _, outcome := range []string{"meets", "breaks", "unproven"} {
				due := outcome != "unproven" || !slices.Contains(structural, rule)
				if asked := strings.Contains(string(text), `"verdict": "`+outcome+`"`); asked != due {
					t.Errorf("%s: a case that is %s: %v, due: %v", rule, outcome, asked, due)
				}
			}
		}
	}
}

// TestWaivable holds that a rule that cannot be waived is a stop: nothing less
// destroys or burns.
func TestWaivable(t *testing.T) {
	fixed := 0
	for name, files := range books(t) {
		book, problems := judge.Load(context.Background(), judge.Source{Name: name, Files: files, Show: "rules/" + name, Embedded: true})
		if book == nil {
			t.Fatal(problems)
		}
		for _, r := range book.Rules() {
			if r.Waivable {
				continue
			}
			fixed++
			if r.Grade != verdict.Stop {
				t.Errorf("%s cannot be waived and is graded %s", r.ID, r.Grade)
			}
		}
	}
	if fixed == 0 {
		t.Error("no rule is beyond a waiver")
	}
}

// always are the codebooks that judge every design.
var always = []string{"datasheet", "limits", "practice"}

// TestCommon holds that nothing is found against the design that the examples of
// a codebook share, by that book or by those that are always in force: a breaking
// example then breaks by what it changes.
func TestCommon(t *testing.T) {
	all := books(t)
	loaded := map[string]*judge.Book{}
	for name, files := range all {
		book, problems := judge.Load(context.Background(), judge.Source{Name: name, Files: files, Show: "rules/" + name, Embedded: true})
		if book == nil {
			t.Fatal(problems)
		}
		loaded[name] = book
	}
	for name := range all {
		if slices.Contains(always, name) && name != "limits" {
			continue // each of their rules needs a design of its own kind
		}
		t.Run(name, func(t *testing.T) { common(t, name, all[name], loaded) })
	}
}

// entire are the codebooks whose common design is a whole system, clean under the
// books that judge every design too. The others show their own code's questions,
// on more current or with fewer data than those books would have it.
var entire = []string{"limits", "us_2023"}

func common(t *testing.T, name string, files fs.FS, loaded map[string]*judge.Book) {
	var judges []*judge.Book
	if slices.Contains(entire, name) {
		for _, n := range always {
			judges = append(judges, loaded[n])
		}
	}
	if !slices.Contains(always, name) {
		judges = append(judges, loaded[name])
	}
	declares := func(book string) (map[string][]design.Attribute, bool) {
		b := loaded[book]
		if b == nil {
			return nil, false
		}
		return b.Codebook().Declares(), true
	}
	d := design.Load(design.Options{Files: files, Path: "common.design.hcl", Parts: []design.PartsGlob{{Glob: "common.parts.hcl"}}, Declares: declares})
	if len(d.Problems) > 0 {
		t.Fatal(d.Problems)
	}
	verdicts, err := judge.New(judge.Options{Books: judges}).Judge(context.Background(), facts.New(d))
	if err != nil {
		t.Fatal(err)
	}
	met := 0
	for i := range verdicts {
		if v := &verdicts[i]; v.Finding() {
			t.Errorf("%s on %s %s: %s %v", v.Rule, v.About, v.Outcome, v.Message, v.Missing)
		} else if v.Outcome == verdict.Meets {
			met++
		}
	}
	if least := map[bool]int{true: 100, false: 10}[slices.Contains(entire, name)]; met < least {
		t.Errorf("only %d verdicts meet: the design shows too little", met)
	}
}
