package judge

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/topdown"

	"stringline/lint/verdict"
	"stringline/schema/source"
)

// jury is one rule's tests, ready to be put to mutants.
type jury struct {
	rule    string
	whole   *Book
	test    *bookTest // of this rule alone; its book is the mutant's
	modules map[string]*ast.Module
	cases   *ast.Module // rule_test.rego; nil where it cannot be read
	expects map[string][]expectation
	held    ast.Value       // what the Rego tests come to on the rule as it is; nil where they give an error
	calls   map[string]bool // the functions of shared/ that the rule comes to call
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
	j.calls = b.reads(rule).shared
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
	// Types are looked at last, if nobody else has noticed: making them anew for
	// each mutant takes longer than all the rest.
	e, problems := compile(ctx, j.test.book, modules, ast.NewCompiler().WithCapabilities(capabilities(false)))
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
	if j.held != nil { // tests that give an error on the rule as it is notice nothing
		now, err := j.tests(within, modules)
		if err != nil {
			return "Rego test", oneLine(err), ctxError(ctx, err)
		}
		if what := j.differs(now); what != "" {
			return "Rego test", what, nil
		}
	}
	// What is left without a use by the change would be refused by chance: the
	// same mistake in a rule that uses it twice would not. So this is not strict.
	if _, problems := newEngine(ctx, j.test.book, modules, capabilities(false), false); len(problems) > 0 {
		return "load", problems[0].Message, nil
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
	d, err := j.test.book.put(ctx, j.rule, e.structure, bench.values, nil)
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
		asTerms(),
	}
	options = append(options, j.test.regoFunctions()...)
	results, err := rego.New(options...).Eval(ctx)
	if err != nil {
		var inside *topdown.Error
		if errors.As(err, &inside) {
			return nil, errors.New(inside.Message)
		}
		return nil, err
	}
	t, err := onlyTerm(results)
	if err != nil {
		return nil, err
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
