package judge

import (
	"bytes"
	"context"
	"fmt"
	"io/fs"
	"maps"
	"regexp"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"stringline/lint/facts"
	"stringline/lint/verdict"
	"stringline/schema/design"
	"stringline/schema/source"
)

// example is one example design of a rule, put together from the codebook's
// common files and the rule's own.
type example struct {
	name   string // "meets" or "breaks"
	design []byte
	parts  []byte // common.parts.hcl without the parts that the design declares anew
	file   string // the rule's own file, as shown
	system *facts.System

	structure *structure
	tree      *ast.Term // the input, marked with whose it is
}

const (
	exampleFile = "example.design.hcl"
	partsFile   = "common.parts.hcl"
)

// readExample puts a rule's example together. A block of the rule's file replaces
// the common one of the same kind and name whole; design, site and grounding,
// of which there is one, replace by kind. What is replaced is blanked, not cut
// out, so that places in the common parts file stay true; the rule's own text
// comes first, so that its lines do.
func (b *Book) readExample(rule, name string) (*example, error) {
	files := b.source.Files
	own, err := fs.ReadFile(files, rule+"/"+name+".design.hcl")
	if err != nil {
		return nil, fmt.Errorf("reading the example: %w", err)
	}
	common, _ := fs.ReadFile(files, "common.design.hcl") // both are optional
	parts, _ := fs.ReadFile(files, partsFile)
	e := &example{name: name, file: b.source.show(rule + "/" + name + ".design.hcl")}
	replaces := map[string]bool{}
	for _, block := range topBlocks(b.parseExample(own, nil), exampleFile) {
		replaces[blockKey(block)] = true
	}
	blank := func(text []byte) []byte {
		text = slices.Clone(text)
		for _, block := range topBlocks(b.parseExample(text, nil), exampleFile) {
			if !replaces[blockKey(block)] {
				continue
			}
			for i := block.Whole.Start.Byte; i < block.Whole.End.Byte && i < len(text); i++ {
				if text[i] != '\n' {
					text[i] = ' '
				}
			}
		}
		return text
	}
	e.design = slices.Concat(own, []byte("\n"), blank(common))
	e.parts = blank(parts)
	d := b.parseExample(e.design, e.parts)
	if len(d.Problems) > 0 {
		lines := bytes.Count(own, []byte("\n")) + 1
		for i := range d.Problems {
			d.Problems[i].At = e.inOwnFile(d.Problems[i].At, lines, b.source.show)
		}
		return nil, fmt.Errorf("the design has problems:\n%w", d.Problems)
	}
	e.system = facts.New(d)
	return e, nil
}

// inOwnFile gives a place in the joined text as one in the file that it came from:
// the rule's own, lines long, or the common one behind it.
func (e *example) inOwnFile(at source.Range, lines int, show func(string) string) source.Range {
	switch {
	case at.File == partsFile:
		at.File = show(partsFile)
	case at.File == exampleFile && at.Start.Line <= lines:
		at.File = e.file
	case at.File == exampleFile:
		at.File = show("common.design.hcl")
		at.Start.Line -= lines
		at.End.Line -= lines
	}
	return at
}

// parseExample reads an example's text with its parts.
func (b *Book) parseExample(text, parts []byte) *design.Design {
	options := design.Options{
		Files: b.source.Files, Path: exampleFile, Text: text,
		Declares: func(book string) (map[string][]design.Attribute, bool) {
			if book != b.Name() {
				return nil, false
			}
			return b.codebook.Declares(), true
		},
	}
	if len(parts) > 0 {
		options.Files = replaced{FS: b.source.Files, name: partsFile, text: parts}
		options.Parts = []design.PartsGlob{{Glob: partsFile}}
	}
	return design.Load(options)
}

// topBlocks lists the blocks that stand at the top of one file.
func topBlocks(d *design.Design, file string) []*design.Block {
	blocks := slices.Clone(d.Blocks)
	if d.Head != nil {
		blocks = append(blocks, d.Head)
	}
	for _, kind := range slices.Sorted(maps.Keys(d.Parts)) {
		for _, name := range slices.Sorted(maps.Keys(d.Parts[kind])) {
			blocks = append(blocks, d.Parts[kind][name])
		}
	}
	return slices.DeleteFunc(blocks, func(b *design.Block) bool { return b.Whole.File != file || b.Parent != nil })
}

func blockKey(b *design.Block) string {
	if b.Kind.Single && !b.Kind.Part {
		return b.Kind.Name
	}
	return b.Kind.Name + " " + b.Name
}

// expectation is a line "# expect: breaks limits.cold_voltage on pv_input.main.1"
// of an example; behind the subject may stand which of its verdicts, in brackets.
type expectation struct {
	outcome            verdict.Outcome
	rule, about, which string
	line               int
}

var (
	expectLine    = regexp.MustCompile(`^\s*(?:#|//)\s*expect\b(.*)$`)
	expectPattern = regexp.MustCompile(`^:\s*(meets|breaks|unproven|void|does_not_apply) ([a-z0-9_]+\.[a-z0-9_]+) on ([^\s()]+)(?: \(([^()]+)\))?\s*$`)
)

// expectations reads an example's expectations; a line that begins like one and
// cannot be read is an error, or a misspelt one would expect nothing.
func expectations(text []byte) ([]expectation, error) {
	var all []expectation
	for i, line := range strings.Split(string(text), "\n") {
		begun := expectLine.FindStringSubmatch(strings.TrimSuffix(line, "\r"))
		if begun == nil {
			continue
		}
		m := expectPattern.FindStringSubmatch(begun[1])
		if m == nil {
			return nil, fmt.Errorf("line %d: an expectation reads `# expect: breaks RULE on SUBJECT`", i+1)
		}
		all = append(all, expectation{outcome: verdict.Outcome(m[1]), rule: m[2], about: m[3], which: m[4], line: i + 1})
	}
	return all, nil
}

// example checks one example design of a rule: its expectations hold, and the
// rule comes out as the file's name says.
func (t *bookTest) example(ctx context.Context, rule string, e *example) {
	at := atLine(e.file, 1)
	expects, err := expectations(e.design)
	if err != nil {
		t.fail(rule, e.name, at, "%v", err)
		return
	}
	vs, err := t.judge.Judge(ctx, e.system)
	if err != nil {
		t.fail(rule, e.name, at, "%v", err)
		return
	}
	wrong := e.wrong(t.book.Name()+"."+rule, expects, vs)
	for _, w := range wrong {
		t.fail(rule, e.name, atLine(e.file, w.line), "%s", w.what)
	}
	if len(wrong) == 0 {
		t.pass(rule, e.name, at)
	}
}

// unlike is one thing that an example does not come to as it should.
type unlike struct {
	line int
	what string
}

// wrong lists what an example's verdicts do not come to: its expectations, and
// what the file's name says about the rule.
func (e *example) wrong(id string, expects []expectation, vs []verdict.Verdict) []unlike {
	count := map[verdict.Outcome]int{}
	var first *verdict.Verdict
	for i := range vs {
		if vs[i].Rule != id {
			continue
		}
		count[vs[i].Outcome]++
		if bad := vs[i].Outcome != verdict.Meets && vs[i].Outcome != verdict.DoesNotApply; bad && first == nil {
			first = &vs[i]
		}
	}
	var all []unlike
	for _, x := range expects {
		if why := x.unmet(vs); why != "" {
			all = append(all, unlike{x.line, fmt.Sprintf("expected: %s %s on %s; %s", x.outcome, x.rule, x.about, why)})
		}
	}
	say := func(format string, args ...any) { all = append(all, unlike{1, fmt.Sprintf(format, args...)}) }
	switch {
	case count[verdict.Void] > 0:
		say("%s on %s %s", id, first.About, outcomeWords(first))
	case e.name == "meets" && first != nil:
		say("the design that meets: %s on %s %s", id, first.About, outcomeWords(first))
	case e.name == "meets" && count[verdict.Meets] == 0:
		say("the design that meets: %s meets nothing there", id)
	case e.name == "breaks" && count[verdict.Breaks] == 0:
		say("the design that breaks: %s breaks nowhere", id)
	}
	return all
}

// unmet says why an expectation does not hold, or "". Without a which it is about
// all of a subject's verdicts: one of them comes out as expected, and where they
// are expected to meet none does otherwise.
func (x *expectation) unmet(vs []verdict.Verdict) string {
	why, held := "there is no such verdict"+x.meant(vs), false
	for i := range vs {
		v := &vs[i]
		switch {
		case v.Rule != x.rule || v.About != x.about || x.which != "" && v.Which != x.which:
		case v.Outcome == x.outcome:
			held = true
		case x.outcome == verdict.Meets && v.Outcome != verdict.DoesNotApply:
			return outcomeWords(v)
		default:
			why = "it " + outcomeWords(v)
		}
	}
	if held {
		return ""
	}
	return why
}

// meant names the rule or the subject that was meant, where a verdict has it.
func (x *expectation) meant(vs []verdict.Verdict) string {
	var rules, subjects []string
	for i := range vs {
		rules = append(rules, vs[i].Rule)
		if vs[i].Rule == x.rule {
			subjects = append(subjects, vs[i].About)
		}
	}
	near := source.Nearest(x.rule, rules)
	if len(subjects) > 0 {
		near = source.Nearest(x.about, subjects)
	}
	if near == "" || near == x.about {
		return ""
	}
	return fmt.Sprintf("; did you mean %q?", near)
}

func outcomeWords(v *verdict.Verdict) string {
	switch v.Outcome {
	case verdict.Void:
		return fmt.Sprintf("is void: %s (%s)", v.Fault.Message, v.Fault.At)
	case verdict.Unproven:
		return "is unproven: missing " + strings.Join(v.Missing, ", ")
	case verdict.DoesNotApply:
		return "does not apply: " + v.Because
	}
	return string(v.Outcome)
}

func atLine(file string, line int) source.Range {
	p := source.Position{Line: line, Column: 1}
	return source.Range{File: file, Start: p, End: p}
}
