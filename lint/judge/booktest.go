package judge

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"path"
	"slices"
	"strings"
	"sync"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
	"github.com/open-policy-agent/opa/v1/tester"
	"github.com/open-policy-agent/opa/v1/topdown"

	"stringline/lint/facts"
	"stringline/schema/source"
)

// TestReport is the outcome of a codebook's own tests.
type TestReport struct {
	Results []TestResult
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

// Error joins the failures, one a line.
func (r *TestReport) Error() string {
	var lines []string
	for _, t := range r.Failed() {
		lines = append(lines, fmt.Sprintf("%s: %s: %s: %s", t.At, t.Rule, t.Name, t.Message))
	}
	return strings.Join(lines, "\n")
}

// Test runs a codebook's own tests with its parameters at their defaults, rule
// by rule: the Rego tests of rule_test.rego, the two example designs with their
// expectations, and deletion. Each rule owes all of these files. The problems
// are those of loading the codebook; then there is no report. Tests run in this
// process, whatever src says: who runs them is who writes the codebook.
func Test(ctx context.Context, src Source) (*TestReport, source.Problems) {
	src.Isolation = nil
	b, problems := Load(ctx, src)
	if len(problems) > 0 {
		return nil, problems
	}
	t := &bookTest{book: b, judge: New(Options{Books: []*Book{b}}), report: &TestReport{}, examples: map[string]*example{},
		structures: map[string]*structure{}, answers: map[string]decoded{}, errors: map[string][]string{}}
	for _, rule := range b.names {
		for _, name := range []string{"meets", "breaks"} {
			e, err := b.readExample(rule, name)
			if err != nil {
				t.fail(rule, name, atLine(b.source.show(rule+"/"+name+".design.hcl"), 1), "%v", err)
				continue
			}
			t.examples[rule+"/"+name] = e
			t.example(ctx, rule, e)
			t.deletion(ctx, rule, e)
		}
	}
	t.rego(ctx)
	return t.report, nil
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

// put puts one rule to a structure. vs is asked where the rule reads values.
func (b *Book) put(ctx context.Context, rule string, st *structure, vs values) (decoded, error) {
	var r *reading
	if b.byValue[rule] {
		r = &reading{structure: st, tables: b.tables, rule: ruleAt(b, rule), values: vs}
	}
	a, err := b.asker().askOne(ctx, b, rule, st, r)
	if err != nil {
		return decoded{}, fmt.Errorf("evaluating rule %s: %w", rule, err)
	}
	return decode(b, rule, st, a), nil
}

// rego runs the Rego tests: each rule test_* of a rule_test.rego, and each case
// of one written test_x[case].
func (t *bookTest) rego(ctx context.Context) {
	modules, tests := t.testModules()
	if len(tests) == 0 {
		return
	}
	t.plant()
	runner := tester.NewRunner().
		SetCompiler(ast.NewCompiler().WithCapabilities(capabilities(true)).WithEnablePrintStatements(true)).
		SetModules(modules).SetStore(inmem.New()).CapturePrintOutput(true).
		RaiseBuiltinErrors(true). // an unknown id must not pass as a false expression
		SetTimeout(time.Minute).
		AddCustomBuiltins(t.functions())
	results, err := runner.RunTests(ctx, nil)
	if err != nil {
		for _, p := range engineProblems(err, t.book.source.show("codebook.hcl")) {
			t.fail("", "rule_test.rego", p.At, "%s", p.Message)
		}
		return
	}
	var all []*tester.Result
	for r := range results {
		all = append(all, r)
	}
	slices.SortFunc(all, func(a, b *tester.Result) int {
		return cmp.Or(cmp.Compare(a.Package, b.Package), cmp.Compare(a.Location.Row, b.Location.Row), cmp.Compare(a.Name, b.Name))
	})
	ran := map[string]bool{}
	for _, r := range all {
		rule := path.Base(path.Dir(r.Location.File))
		ran[rule] = true
		t.outcome(rule, r)
	}
	for _, rule := range t.book.names {
		if m := tests[rule]; m != nil && !ran[rule] {
			t.fail(rule, "rule_test.rego", rangeOf(m.Package.Location), "the file has no rule test_*")
		}
	}
}

// outcome turns one test's result into ours, each of its cases by itself.
func (t *bookTest) outcome(rule string, r *tester.Result) {
	at := rangeOf(r.Location)
	printed := strings.TrimRight(string(r.Output), "\n")
	if printed != "" {
		printed = "\n" + printed
	}
	var inside *topdown.Error
	switch {
	case errors.As(r.Error, &inside):
		if inside.Location != nil && inside.Location.File != "" {
			at = rangeOf(inside.Location)
		}
		t.fail(rule, r.Name, at, "%s%s", inside.Message, printed)
	case r.Error != nil && len(t.errors[rule]) > 0:
		t.fail(rule, r.Name, at, "%s%s", strings.Join(t.errors[rule], "\n"), printed)
	case r.Error != nil:
		t.fail(rule, r.Name, at, "%v%s", r.Error, printed)
	case r.Skip:
		t.fail(rule, r.Name, at, "the test is skipped: take it out or let it run")
	case len(r.SubResults) > 0:
		for _, name := range slices.Sorted(maps.Keys(r.SubResults)) {
			if r.SubResults[name].Fail {
				t.fail(rule, r.Name+": "+name, at, "the case is not true%s", printed)
				continue
			}
			t.pass(rule, r.Name+": "+name, at)
		}
	case r.Fail:
		t.fail(rule, r.Name, at, "the test is not true%s", printed)
	default:
		t.pass(rule, r.Name, at)
	}
}

// testModules parses all modules afresh (compiling changes them) and the tests.
func (t *bookTest) testModules() (modules, tests map[string]*ast.Module) {
	modules, tests = map[string]*ast.Module{}, map[string]*ast.Module{}
	b := t.book
	parse := func(name string) *ast.Module {
		text, err := fs.ReadFile(b.source.Files, name)
		if err != nil {
			t.fail(strings.TrimSuffix(name, "/rule_test.rego"), "rule_test.rego", atLine(b.source.show(name), 1), "reading the test: %v", err)
			return nil
		}
		m, err := ast.ParseModuleWithOpts(b.source.show(name), string(text), ast.ParserOptions{RegoVersion: ast.RegoV1, Capabilities: capabilities(true)})
		if err != nil {
			for _, p := range engineProblems(err, b.source.show(name)) {
				t.fail(name, "rule_test.rego", p.At, "%s", p.Message)
			}
			return nil
		}
		if m != nil {
			modules[b.source.show(name)] = m
		}
		return m
	}
	shared, _ := fs.Glob(b.source.Files, "shared/*.rego")
	for _, name := range shared {
		parse(name)
	}
	for _, rule := range b.names {
		parse(rule + "/rule.rego")
		m := parse(rule + "/rule_test.rego")
		if m == nil {
			continue
		}
		if due := ruleRef(b.Name(), rule+"_test"); !m.Package.Path.Equal(due) {
			t.fail(rule, "rule_test.rego", rangeOf(m.Package.Location), "the package is %s", due.String()[len("data."):])
			delete(modules, b.source.show(rule+"/rule_test.rego"))
			continue
		}
		tests[rule] = m
	}
	return modules, tests
}
