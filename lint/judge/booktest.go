package judge

import (
	"context"
	"errors"
	"fmt"
	"maps"
	"runtime"
	"slices"
	"strings"
	"sync"
	"sync/atomic"

	"stringline/lint/facts"
	"stringline/schema/source"
)

// TestOptions says how much of a codebook is tested.
type TestOptions struct {
	Rules    []string // names of rules in the codebook; empty for all
	Mutation bool     // put small mistakes into the rules and ask who notices
	Coverage bool     // tell which of a rule's expressions its Rego tests reach
	// Progress, if not nil, is told how many rules went through mutation, from
	// several goroutines.
	Progress func(done, total int)
}

// TestReport is the outcome of a codebook's own tests.
type TestReport struct {
	Book     string
	Version  string
	Rules    int // that were tested
	Results  []TestResult
	Mutants  []Mutant
	Coverage []Coverage // by rule
}

// TestResult is one test: a Rego test by its name, "meets" and "breaks" for the
// example designs, "deletion" for the attributes taken out of them one by one.
type TestResult struct {
	Rule, Name string
	Passed     bool
	Message    string // why not
	At         source.Range
}

// Failed gives the results that did not pass.
func (r *TestReport) Failed() []TestResult {
	return slices.DeleteFunc(slices.Clone(r.Results), func(t TestResult) bool { return t.Passed })
}

// Survivors gives the mutants that nobody noticed.
func (r *TestReport) Survivors() []Mutant {
	return slices.DeleteFunc(slices.Clone(r.Mutants), func(m Mutant) bool { return !m.Survived() })
}

// Error joins the failures and the surviving mutants, one a line.
func (r *TestReport) Error() string {
	var lines []string
	for _, t := range r.Failed() {
		lines = append(lines, fmt.Sprintf("%s: %s: %s: %s", t.At, t.Rule, t.Name, t.Message))
	}
	for _, m := range r.Survivors() {
		lines = append(lines, fmt.Sprintf("%s: %s: nobody notices the mutant: %s", m.At, m.Rule, m.Name))
	}
	return strings.Join(lines, "\n")
}

// Test runs a codebook's own tests with its parameters at their defaults, rule
// by rule: the Rego tests of rule_test.rego, the two example designs with their
// expectations, deletion, and what else the options ask for. Each rule owes all
// of these files. The problems are those of loading the codebook; then there is
// no report. The error is the context's, or names a rule that is not there. Tests
// run in this process, whatever src says: who runs them is who writes the codebook.
func Test(ctx context.Context, src Source, o TestOptions) (*TestReport, source.Problems, error) {
	src.Isolation = nil
	b, problems := Load(ctx, src)
	if len(problems) > 0 {
		return nil, problems, nil
	}
	for _, name := range o.Rules {
		if b.rule(name) == nil {
			message := fmt.Sprintf("codebook %s has no rule %q", b.Name(), name)
			if near := source.Nearest(name, b.names); near != "" {
				message += fmt.Sprintf("; did you mean %q?", near)
			}
			return nil, nil, errors.New(message)
		}
	}
	t := newBookTest(b)
	t.report.Book, t.report.Version = b.Name(), b.codebook.Version
	t.designs(ctx, o.Rules)
	if len(o.Rules) == 0 {
		t.unused()
	}
	t.rego(ctx, o)
	if o.Mutation {
		if err := t.mutation(ctx, o); err != nil {
			return nil, nil, err
		}
	}
	if err := ctx.Err(); err != nil {
		return nil, nil, fmt.Errorf("testing codebook %s: %w", b.Name(), err)
	}
	return t.report, nil, nil
}

// designs judges the example designs, and takes out what their verdicts rest on,
// rule by rule and side by side.
func (t *bookTest) designs(ctx context.Context, rules []string) {
	var asked []string
	for _, rule := range t.book.names {
		if t.asked(rules, rule) {
			asked = append(asked, rule)
		}
	}
	t.report.Rules = len(asked)
	parts := make([]*bookTest, len(asked))
	sideBySide(ctx, len(asked), func(i int) {
		parts[i] = newBookTest(t.book)
		parts[i].judge = t.judge
		parts[i].ownDesigns(ctx, asked[i])
	})
	for _, part := range parts {
		if part == nil {
			continue // the run was stopped
		}
		t.report.Results = append(t.report.Results, part.report.Results...)
		maps.Copy(t.examples, part.examples)
	}
}

// ownDesigns does so for one rule.
func (t *bookTest) ownDesigns(ctx context.Context, rule string) {
	for _, name := range []string{"meets", "breaks"} {
		e, err := t.book.readExample(rule, name)
		if err != nil {
			t.fail(rule, name, atLine(t.book.source.show(rule+"/"+name+".design.hcl"), 1), "%v", err)
			continue
		}
		t.examples[rule+"/"+name] = e
		t.example(ctx, rule, e)
		t.deletion(ctx, rule, e)
	}
}

// sideBySide calls do for 0 to n-1 on all processors, until the context ends.
func sideBySide(ctx context.Context, n int, do func(i int)) {
	var next atomic.Int64
	var group sync.WaitGroup
	for range min(runtime.GOMAXPROCS(0), n) {
		group.Go(func() {
			for {
				i := int(next.Add(1)) - 1
				if i >= n || ctx.Err() != nil {
					return
				}
				do(i)
			}
		})
	}
	group.Wait()
}

func newBookTest(b *Book) *bookTest {
	return &bookTest{book: b, judge: New(Options{Books: []*Book{b}}), report: &TestReport{}, examples: map[string]*example{},
		structures: map[string]*structure{}, answers: map[string]decoded{}, errors: map[string][]string{}}
}

func (t *bookTest) asked(rules []string, rule string) bool {
	return len(rules) == 0 || slices.Contains(rules, rule)
}

// bookTest runs one codebook's tests.
type bookTest struct {
	book     *Book
	judge    *Judge
	report   *TestReport
	examples map[string]*example // by "RULE/meets"
	// What rules answered for a structure, and structures, so that taking out
	// an attribute costs no more than its facts.
	structures map[string]*structure
	answers    map[string]decoded
	mutex      sync.Mutex          // held while a Rego test asks for verdicts
	errors     map[string][]string // of calls of test.*, by rule
	// standing, if not nil, keeps the examples with stand-ins put in, for tests
	// that run over and over.
	standing map[string]*standing
}

func (t *bookTest) structure(s *facts.System) *structure {
	key := s.Structure()
	st := t.structures[key]
	if st == nil {
		st = buildStructure(t.book.codebook, s)
		t.structures[key] = st
	}
	return st
}

func (t *bookTest) fail(rule, name string, at source.Range, format string, args ...any) {
	t.report.Results = append(t.report.Results, TestResult{Rule: rule, Name: name, Message: fmt.Sprintf(format, args...), At: at})
}

func (t *bookTest) pass(rule, name string, at source.Range) {
	t.report.Results = append(t.report.Results, TestResult{Rule: rule, Name: name, Passed: true, At: at})
}

// rule finds a rule's declaration by its name in the codebook.
func (b *Book) rule(name string) *Rule {
	for i := range b.names {
		if b.names[i] == name {
			return &b.rules[i]
		}
	}
	return nil
}
