package judge

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"path"
	"runtime"
	"slices"
	"strings"
	"sync"
	"sync/atomic"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/cover"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
	"github.com/open-policy-agent/opa/v1/tester"
	"github.com/open-policy-agent/opa/v1/topdown"

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
// no report. The error is the context's, or names a rule that is not there.
func Test(ctx context.Context, src Source, o TestOptions) (*TestReport, source.Problems, error) {
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

// put puts one rule to a structure. vs is asked where the rule reads values.
func (b *Book) put(ctx context.Context, rule string, st *structure, vs values) (decoded, error) {
	var r *reading
	if b.byValue[rule] {
		r = &reading{structure: st, tables: b.tables, values: vs}
	}
	a, err := b.engine.askOne(ctx, b, rule, st, r)
	if err != nil {
		return decoded{}, fmt.Errorf("evaluating rule %s: %w", rule, err)
	}
	return decode(b, rule, st, a), nil
}

// rego runs the Rego tests: each rule test_* of a rule_test.rego, and each case
// of one written test_x[case].
func (t *bookTest) rego(ctx context.Context, o TestOptions) {
	modules, tests := t.testModules(o.Rules)
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
	var reached *cover.Cover
	if o.Coverage {
		reached = cover.New()
		runner.SetCoverageQueryTracer(reached)
	}
	results, err := runner.RunTests(ctx, nil)
	if err != nil {
		for _, p := range engineProblems(err, t.book.source.show("codebook.hcl")) {
			message := p.Message
			if p.Near != "" {
				message += fmt.Sprintf("; did you mean %q?", p.Near)
			}
			t.fail(path.Base(path.Dir(p.At.File)), "rule_test.rego", p.At, "%s", message)
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
	if reached != nil {
		t.coverage(reached, o.Rules)
	}
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
func (t *bookTest) testModules(rules []string) (modules, tests map[string]*ast.Module) {
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
				t.fail(path.Dir(name), "rule_test.rego", p.At, "%s", p.Message)
			}
			return nil
		}
		if m != nil {
			modules[b.source.show(name)] = m
		}
		return m
	}
	for _, name := range b.sharedFiles() {
		parse(name)
	}
	for _, rule := range b.names {
		if !t.asked(rules, rule) {
			continue
		}
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
		if !t.imports(rule, m) {
			delete(modules, b.source.show(rule+"/rule_test.rego"))
			continue
		}
		tests[rule] = m
	}
	return modules, tests
}

// imports holds a test to its own rule and to shared/: an import of anything else
// would be undefined, and the engine calls what it stands for "unsafe".
func (t *bookTest) imports(rule string, m *ast.Module) bool {
	own, shared := ruleRef(t.book.Name(), rule), sharedRef(t.book.Name())
	sound := true
	for _, i := range m.Imports {
		r, ok := i.Path.Value.(ast.Ref)
		if !ok || !r[0].Equal(ast.DefaultRootDocument) || r.Equal(own) || r.Equal(shared) {
			continue
		}
		sound = false
		t.fail(rule, "rule_test.rego", rangeOf(i.Location), "a test imports its own rule, %v, and shared/; not %v", own, r)
	}
	return sound
}
