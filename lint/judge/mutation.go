package judge

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"slices"
	"sync/atomic"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"

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
	mostMutants   = 1000            // of one module
	longestMutant = 5 * time.Minute // that one may run; a rule takes milliseconds, but a machine may be busy
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
	var done atomic.Int64
	sideBySide(ctx, len(suspects), func(i int) {
		errs[i] = t.book.mutate(ctx, &suspects[i], &reports[i])
		if n := int(done.Add(1)); o.Progress != nil {
			o.Progress(n, len(suspects))
		}
	})
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
		if err := b.notice(ctx, s, change.in, changed, juries, &mutant); err != nil {
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

// notice asks each rule that may notice: of a change in a function of shared/ those
// that come to call it.
func (b *Book) notice(ctx context.Context, s *suspect, in string, changed *ast.Module, juries map[string]*jury, mutant *Mutant) error {
	for _, rule := range s.jury {
		j := juries[rule]
		if j == nil {
			var err error
			if j, err = b.newJury(ctx, rule); err != nil {
				return err
			}
			juries[rule] = j
		}
		if s.rule == "shared" && !j.calls[in] {
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
