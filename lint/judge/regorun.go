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
	"time"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/cover"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
	"github.com/open-policy-agent/opa/v1/tester"
	"github.com/open-policy-agent/opa/v1/topdown"
)

// longestTest is what one Rego test with all its cases may take. Milliseconds a
// case are usual; this only ends what would never end, on however busy a machine.
const longestTest = 15 * time.Minute

// rego runs the Rego tests: each rule test_* of a rule_test.rego, and each case
// of one written test_x[case].
func (t *bookTest) rego(ctx context.Context, o TestOptions) {
	before := len(t.report.Results)
	modules, tests := t.testModules(o.Rules)
	if len(tests) == 0 {
		return
	}
	t.plant()
	runner := tester.NewRunner().
		SetCompiler(ast.NewCompiler().WithCapabilities(capabilities(true)).WithEnablePrintStatements(true)).
		SetModules(modules).SetStore(inmem.New()).CapturePrintOutput(true).
		RaiseBuiltinErrors(true). // an unknown id must not pass as a false expression
		SetTimeout(longestTest).
		SetParallel(runtime.GOMAXPROCS(0)). // its default counts processors that a container may not use
		SetCoverageRuns(nil).               // what an unindexed search would reach too is no news to us
		AddCustomBuiltins(t.functions())
	var reached *cover.Cover
	if o.Coverage {
		reached = cover.New()
		runner.SetCoverageQueryTracer(reached)
	}
	results, err := runner.RunTests(ctx, nil)
	if err != nil && len(tests) > 1 { // one test that does not compile keeps none of the others from running
		t.report.Results = t.report.Results[:before]
		for _, rule := range t.book.names {
			if t.asked(o.Rules, rule) {
				one := o
				one.Rules = []string{rule}
				t.rego(ctx, one)
			}
		}
		return
	}
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
