package judge

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"runtime"
	"slices"
	"strings"
	"sync"
	"sync/atomic"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/topdown"

	"stringline/lint/verdict"
	"stringline/schema/source"
)

// Mutant is a rule with one small mistake put into it, and who noticed. A rule
// is tested well where somebody notices each of them.
type Mutant struct {
	Rule string // the rule's name in its codebook, or "shared"
	Name string // what was changed, see [Equivalent]
	At   source.Range
	// Caught says who noticed: "load", "example" or "Rego test"; "" for nobody.
	Caught string
	Detail string // what was noticed, in a line
	Reason string // why it need not be noticed, where the rule lists it as equivalent
}

// Survived tells whether a mutant passed unnoticed and is not known to mean the
// same as the rule.
func (m *Mutant) Survived() bool { return m.Caught == "" && m.Reason == "" }

// Bounds on mutation.
const (
	mostMutants   = 1000             // of one module
	longestMutant = 10 * time.Second // that one may run; a rule takes milliseconds
)

// suspect is a module that is to be changed: a rule's, or one of shared/.
type suspect struct {
	rule       string // "shared" for one of shared/
	file       string // in the codebook's folder
	equivalent []Equivalent
	jury       []string // the rules whose tests may notice, in order
}

// mutation puts small mistakes into the rules, one at a time, and asks who
// notices: the load, an example design's expectations, or a Rego test. A mutant
// is compiled with shared/ and its own rule alone. Rules are tried side by side.
func (t *bookTest) mutation(ctx context.Context, o TestOptions) error {
	suspects := t.suspects(o.Rules)
	reports := make([]TestReport, len(suspects))
	errs := make([]error, len(suspects))
	var next, done atomic.Int64
	var group sync.WaitGroup
	for range min(runtime.GOMAXPROCS(0), len(suspects)) {
		group.Go(func() {
			for {
				i := int(next.Add(1)) - 1
				if i >= len(suspects) || ctx.Err() != nil {
					return
				}
				errs[i] = t.book.mutate(ctx, &suspects[i], &reports[i])
				if n := int(done.Add(1)); o.Progress != nil {
					o.Progress(n, len(suspects))
				}
			}
		})
	}
	group.Wait()
	for i := range suspects {
		t.report.Results = append(t.report.Results, reports[i].Results...)
		t.report.Mutants = append(t.report.Mutants, reports[i].Mutants...)
	}
	return errors.Join(append(errs, ctx.Err())...)
}

// suspects lists what is to be changed: the rules that are tested, and what they
// share where all are.
func (t *bookTest) suspects(rules []string) []suspect {
	var all []suspect
	for i, name := range t.book.names {
		if len(rules) == 0 || slices.Contains(rules, name) {
			all = append(all, suspect{rule: name, file: name + "/rule.rego", equivalent: t.book.rules[i].Equivalent, jury: []string{name}})
		}
	}
	if len(rules) == 0 {
		for _, file := range t.book.sharedFiles() {
			all = append(all, suspect{rule: "shared", file: file, equivalent: t.book.sharedEquivalent[file], jury: t.book.names})
		}
	}
	return all
}

func (b *Book) sharedFiles() []string {
	files, _ := fs.Glob(b.source.Files, "shared/*.rego") // the pattern is sound
	return files
}

// mutate tries every mutant of one module.
func (b *Book) mutate(ctx context.Context, s *suspect, report *TestReport) error {
	m, err := b.parseFile(s.file, false)
	if err != nil {
		return fmt.Errorf("reading %s again: %w", s.file, err)
	}
	juries := map[string]*jury{}
	kin := &siblings{book: b.codebook}
	found := changes(m, kin)
	at := rangeOf(m.Package.Location)
	if len(found) > mostMutants {
		report.Results = append(report.Results, TestResult{Rule: s.rule, Name: "mutation", At: at,
			Message: fmt.Sprintf("the rule has %d mutants, more than %d: part it", len(found), mostMutants)})
		return nil
	}
	known := map[string]Equivalent{}
	for _, e := range s.equivalent {
		known[e.Mutant] = e
	}
	for i := range found {
		if err := ctx.Err(); err != nil {
			return err
		}
		changed := m.Copy()
		change := changes(changed, kin)[i]
		change.do()
		if err := settle(changed); err != nil {
			return err
		}
		mutant := Mutant{Rule: s.rule, Name: change.name, At: rangeOf(change.at)}
		if err := b.notice(ctx, s, changed, juries, &mutant); err != nil {
			return err
		}
		if e, ok := known[change.name]; ok {
			delete(known, change.name)
			if mutant.Caught == "" {
				mutant.Reason = e.Reason
			} else {
				report.Results = append(report.Results, TestResult{Rule: s.rule, Name: "equivalent", At: e.At,
					Message: fmt.Sprintf("the mutant %q is listed as equivalent, but it is noticed: %s", change.name, mutant.Detail)})
			}
		}
		report.Mutants = append(report.Mutants, mutant)
	}
	names := make([]string, len(found))
	for i := range found {
		names[i] = found[i].name
	}
	for _, name := range slices.Sorted(maps.Keys(known)) {
		message := fmt.Sprintf("no mutant is named %q", name)
		if near := source.Nearest(name, names); near != "" {
			message += fmt.Sprintf("; did you mean %q?", near)
		}
		report.Results = append(report.Results, TestResult{Rule: s.rule, Name: "equivalent", At: known[name].At, Message: message})
	}
	return nil
}

// notice asks each rule that may notice.
func (b *Book) notice(ctx context.Context, s *suspect, changed *ast.Module, juries map[string]*jury, mutant *Mutant) error {
	for _, rule := range s.jury {
		j := juries[rule]
		if j == nil {
			var err error
			if j, err = b.newJury(ctx, rule); err != nil {
				return err
			}
			juries[rule] = j
		}
		if s.rule == "shared" && !j.callsShared {
			continue
		}
		var err error
		if mutant.Caught, mutant.Detail, err = j.try(ctx, b.source.show(s.file), changed); err != nil || mutant.Caught != "" {
			if s.rule == "shared" && mutant.Caught != "" && mutant.Caught != "load" {
				mutant.Detail = rule + ": " + mutant.Detail
			}
			return err
		}
	}
	return nil
}

// jury is one rule's tests, ready to be put to mutants.
type jury struct {
	rule        string
	whole       *Book
	test        *bookTest // of this rule alone; its book is the mutant's
	modules     map[string]*ast.Module
	cases       *ast.Module // rule_test.rego; nil where it cannot be read
	expects     map[string][]expectation
	held        ast.Value // what the Rego tests come to on the rule as it is
	callsShared bool
}

// newJury reads a rule's tests and examples afresh: a design serves one goroutine.
func (b *Book) newJury(ctx context.Context, rule string) (*jury, error) {
	j := &jury{rule: rule, whole: b, modules: map[string]*ast.Module{}, expects: map[string][]expectation{}}
	for _, file := range append(b.sharedFiles(), rule+"/rule.rego") {
		m, err := b.parseFile(file, false)
		if err != nil {
			return nil, fmt.Errorf("reading %s again: %w", file, err)
		}
		j.modules[b.source.show(file)] = m
	}
	for _, i := range j.modules[b.source.show(rule+"/rule.rego")].Imports {
		j.callsShared = j.callsShared || i.Path.Value.Compare(sharedRef(b.Name())) == 0
	}
	one := *b
	one.names, one.rules = []string{rule}, []Rule{*b.rule(rule)}
	j.test = newBookTest(&one)
	j.test.standing = map[string]*standing{}
	for _, name := range []string{"meets", "breaks"} {
		e, err := b.readExample(rule, name)
		if err != nil {
			continue // told by the test itself
		}
		j.test.examples[rule+"/"+name] = e
		j.expects[name], _ = expectations(e.design)
	}
	j.test.plant()
	var err error
	if j.cases, err = b.parseFile(rule+"/rule_test.rego", true); err != nil {
		return j, nil // told by the test itself
	}
	j.held, err = j.tests(ctx, j.modules)
	return j, ctxError(ctx, err)
}

// ctxError keeps an error of the run's own context; any other is a mutant's.
func ctxError(ctx context.Context, err error) error {
	if ctx.Err() != nil {
		return fmt.Errorf("trying mutants: %w", ctx.Err())
	}
	return nil
}

func (b *Book) parseFile(name string, tests bool) (*ast.Module, error) {
	text, err := fs.ReadFile(b.source.Files, name)
	if err != nil {
		return nil, err
	}
	m, err := ast.ParseModuleWithOpts(b.source.show(name), string(text), ast.ParserOptions{RegoVersion: ast.RegoV1, Capabilities: capabilities(tests)})
	if err == nil && m == nil {
		err = errors.New("the file is empty")
	}
	return m, err
}

// try puts a changed module in place of its file and says who notices. The
// error is the context's.
func (j *jury) try(ctx context.Context, file string, changed *ast.Module) (by, what string, err error) {
	modules := maps.Clone(j.modules)
	modules[file] = changed
	if problems := j.lint(modules, changed); len(problems) > 0 {
		return "load", problems[0].Message, nil
	}
	// What is left without a use by the change would be refused by chance: the
	// same mistake in a rule that uses it twice would not.
	e, problems := newEngine(ctx, j.test.book, modules, capabilities(false), false)
	if len(problems) > 0 {
		return "load", problems[0].Message, nil
	}
	mutant := *j.test.book
	mutant.engine = e
	j.test.book = &mutant
	within, cancel := context.WithTimeout(ctx, longestMutant)
	defer cancel()
	for _, name := range []string{"meets", "breaks"} {
		what, err := j.example(within, name)
		if err != nil {
			return "example", "it does not end", ctxError(ctx, err)
		}
		if what != "" {
			return "example", name + ": " + what, nil
		}
	}
	if j.cases == nil {
		return "", "", nil
	}
	now, err := j.tests(within, modules)
	if err != nil {
		return "Rego test", oneLine(err), ctxError(ctx, err)
	}
	if what := j.differs(now); what != "" {
		return "Rego test", what, nil
	}
	return "", "", nil
}

func oneLine(err error) string { return strings.Join(strings.Fields(err.Error()), " ") }

// lint walks the changed module as loading does.
func (j *jury) lint(modules map[string]*ast.Module, changed *ast.Module) source.Problems {
	var shared []*ast.Module
	for _, file := range slices.Sorted(maps.Keys(modules)) {
		if modules[file].Package.Path.Equal(sharedRef(j.whole.Name())) {
			shared = append(shared, modules[file])
		}
	}
	self := j.rule
	if changed.Package.Path.Equal(sharedRef(j.whole.Name())) {
		self = ""
	}
	return j.whole.lintModule(shared, changed, self)
}

// example judges an example design by the mutant and says what is not as owed.
func (j *jury) example(ctx context.Context, name string) (string, error) {
	e := j.test.examples[j.rule+"/"+name]
	if e == nil {
		return "", nil
	}
	c := &court{judge: j.test.judge, system: e.system, places: map[string][]source.Range{}}
	bench := c.bench(j.test.book.rule(j.rule))
	d, err := j.test.book.put(ctx, j.rule, e.structure, bench.values)
	if err != nil {
		return "", err
	}
	vs := bench.all(&d, e.system)
	verdict.Sort(vs)
	own := slices.DeleteFunc(slices.Clone(j.expects[name]), func(x expectation) bool { return x.rule != j.whole.Name()+"."+j.rule })
	if wrong := e.wrong(j.whole.Name()+"."+j.rule, own, vs); len(wrong) > 0 {
		return wrong[0].what, nil
	}
	return "", nil
}

// tests evaluates the Rego tests of the rule and gives the document of their
// package: what is true in it passed.
func (j *jury) tests(ctx context.Context, modules map[string]*ast.Module) (ast.Value, error) {
	all := maps.Clone(modules)
	all[j.whole.source.show(j.rule+"/rule_test.rego")] = j.cases
	c := ast.NewCompiler().WithCapabilities(capabilities(true))
	c.Compile(all)
	if c.Failed() {
		return nil, c.Errors
	}
	options := []func(*rego.Rego){
		rego.ParsedQuery(ast.NewBody(ast.NewExpr(ast.NewTerm(ruleRef(j.whole.Name(), j.rule+"_test"))))),
		rego.Compiler(c), rego.StrictBuiltinErrors(true),
		rego.GenerateJSON(func(t *ast.Term, _ *rego.EvalContext) (any, error) { return t, nil }),
	}
	for _, f := range j.test.regoFunctions() {
		options = append(options, f)
	}
	results, err := rego.New(options...).Eval(ctx)
	if err != nil {
		var inside *topdown.Error
		if errors.As(err, &inside) {
			return nil, errors.New(inside.Message)
		}
		return nil, err
	}
	if len(results) != 1 || len(results[0].Expressions) != 1 {
		return nil, errors.New("the tests gave no answer")
	}
	t, ok := results[0].Expressions[0].Value.(*ast.Term)
	if !ok {
		return nil, errors.New("the tests gave no term")
	}
	return t.Value, nil
}

// differs names a test that no longer comes to what it came to.
func (j *jury) differs(now ast.Value) string {
	was, ok := j.held.(ast.Object)
	is, ok2 := now.(ast.Object)
	if !ok || !ok2 {
		return "" // without tests that hold none can fail
	}
	found := ""
	was.Foreach(func(k, v *ast.Term) {
		name, _ := k.Value.(ast.String)
		if found != "" || !strings.HasPrefix(string(name), "test_") {
			return
		}
		after := is.Get(k)
		switch {
		case after == nil:
			found = string(name)
		case v.Value.Compare(after.Value) != 0:
			found = string(name) + missing(v, after)
		}
	})
	return found
}

// missing names the first case that is gone from a test's set or object.
func missing(was, is *ast.Term) string {
	name := ""
	switch w := was.Value.(type) {
	case ast.Set:
		if n, ok := is.Value.(ast.Set); ok {
			gone := w.Diff(n).Slice()
			if len(gone) > 0 {
				name = ": " + shown(nil, gone[0])
			}
		}
	case ast.Object:
		if n, ok := is.Value.(ast.Object); ok {
			w.Foreach(func(k, v *ast.Term) {
				if other := n.Get(k); name == "" && (other == nil || !other.Equal(v)) {
					name = ": " + shown(nil, k)
				}
			})
		}
	}
	return name
}
