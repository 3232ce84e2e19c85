package rules_test

import (
	"context"
	"io/fs"
	"path"
	"slices"
	"strings"
	"testing"

	"stringline/lint/facts"
	"stringline/lint/judge"
	"stringline/lint/verdict"
	"stringline/rules"
	"stringline/schema/design"
)

// TestBooks runs every embedded codebook's own tests: the Rego tests, the two
// example designs of each rule with their expectations, and deletion: without
// any attribute that a verdict relied on, that verdict is not a pass.
func TestBooks(t *testing.T) {
	for name, files := range books(t) {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			report, problems := judge.Test(context.Background(), judge.Source{Name: name, Files: files, Show: "rules/" + name, Embedded: true})
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

// TestCommon holds that nothing is found against the design that the examples
// of limits share, by any codebook that is in force for every design: a breaking
// example then breaks by what it changes. Code books have designs of their own.
func TestCommon(t *testing.T) {
	all := books(t)
	var judges []*judge.Book
	for _, name := range []string{"datasheet", "limits", "practice"} {
		files := all[name]
		book, problems := judge.Load(context.Background(), judge.Source{Name: name, Files: files, Show: "rules/" + name, Embedded: true})
		if book == nil {
			t.Fatal(problems)
		}
		judges = append(judges, book)
	}
	d := design.Load(design.Options{Files: all["limits"], Path: "common.design.hcl", Parts: []design.PartsGlob{{Glob: "common.parts.hcl"}}})
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
	if met < 100 {
		t.Errorf("only %d verdicts meet: the design shows too little", met)
	}
}
