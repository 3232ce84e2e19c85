package lint_test

import (
	"cmp"
	"context"
	"fmt"
	"maps"
	"path"
	"runtime"
	"slices"
	"strings"
	"sync"
	"testing"
	"testing/fstest"

	"stringline/lint"
	"stringline/lint/facts"
	"stringline/lint/judge"
	"stringline/lint/verdict"
	"stringline/schema/design"
	"stringline/schema/source"
	"stringline/schema/workshop"
)

// written is one attribute as it stands in a file of an example.
type written struct {
	kind, name string // "cable_run", "length"
	span       source.Range
	ids        []string // the facts that it is
	facts      []string // the same as COLLECTION.NAME of the fact table
}

func (a written) key() string { return a.kind + "." + a.name }

// room is an example with all it needs to be judged again.
type room struct {
	file   string // examples/hut/hut.design.hcl
	dir    string
	files  fstest.MapFS // rooted at its workshop
	parts  []design.PartsGlob
	cache  design.PartsCache // of the parts as they are
	judge  *judge.Judge
	asks   map[string]*judge.Book // codebooks that designs may answer, by name
	coded  bool                   // a code judges it, besides what judges every design
	before map[string]verdict.Verdict
}

// load reads the design. What is cut, if not empty, replaces one of the files.
func (r *room) load(name string, cut []byte) *design.Design {
	o := design.Options{Files: r.files, Path: path.Base(r.file), Parts: r.parts, Cache: &r.cache, Declares: func(book string) (map[string][]design.Attribute, bool) {
		b, ok := r.asks[book]
		if !ok {
			return nil, false
		}
		return b.Codebook().Declares(), true
	}}
	switch name {
	case "":
	case o.Path:
		o.Text = cut
	default:
		files := maps.Clone(r.files)
		files[name] = &fstest.MapFile{Data: cut}
		o.Files, o.Cache = files, nil
	}
	return design.Load(o)
}

// TestExamplesDeletion is the bar that nothing is taken for granted in silence.
// Out of every example every attribute that is written down is taken, one at a
// time, those of its parts too. Every verdict that rested on it must then
// say so: it is unproven and names the attribute, or breaks on what is left, or
// stands on another attribute that is written down, or shows the documented
// default among what it assumes; or the design no longer loads, and the problem
// names the attribute. An attribute whose absence no verdict notices must wait
// for a later reader (testdata/waiting.json) or stand in the list below with a
// reason.
func TestExamplesDeletion(t *testing.T) {
	texts := exampleTexts(t)
	result := runExamples(t, texts)
	asks := map[string]*judge.Book{}
	for _, b := range embeddedBooks(t) {
		if slices.ContainsFunc(result.Books, func(used lint.BookInUse) bool { return used.Name == b.Name() }) {
			asks[b.Name()] = b
		}
	}
	judges := map[string]*judge.Judge{} // by the names of their books
	noticed := map[string]bool{}        // attributes of byCode that a code's rule notices
	waits := waitingList(t)

	silent := map[string]string{} // attribute that no verdict noticed → where
	tried := 0
	for i := range result.Designs {
		r := openRoom(t, texts, result.Designs[i].File, asks, judges)
		attributes := r.attributes(t)
		if underRace { // enough to see goroutines meet
			attributes = attributes[:len(attributes)/20]
		}
		tried += len(attributes)
		for k, found := range r.tryAll(attributes) {
			a := attributes[k]
			for _, wrong := range found.wrong {
				t.Errorf("%s: without %s: %s", a.span, a.key(), wrong)
			}
			waiting := len(a.facts) > 0 && !slices.ContainsFunc(a.facts, func(name string) bool { _, ok := waits[name]; return !ok })
			if slices.Contains(byCode, a.key()) {
				noticed[a.key()] = noticed[a.key()] || r.coded && !found.silent
				continue
			}
			if found.silent && !waiting {
				silent[a.key()] = a.span.String()
			}
		}
	}
	if underRace {
		return
	}
	if tried < 2000 {
		t.Fatalf("only %d attributes tried", tried)
	}
	for _, key := range byCode {
		if !noticed[key] {
			t.Errorf("%s is noticed in no example that a code judges", key)
		}
	}
	for _, key := range slices.Sorted(maps.Keys(silent)) {
		if unnoticed[key] == "" {
			t.Errorf("%s: no verdict notices that %s is gone, and no reason is given", silent[key], key)
		}
	}
	for _, key := range slices.Sorted(maps.Keys(unnoticed)) {
		if silent[key] == "" {
			t.Errorf("%s is always noticed: strike it from the list", key)
		}
	}
}

// inEveryDesign are the codebooks that are always in force.
var inEveryDesign = []string{"datasheet", "limits", "practice"}

func openRoom(t *testing.T, texts map[string]string, file string, asks map[string]*judge.Book, judges map[string]*judge.Judge) *room {
	t.Helper()
	r := &room{file: file, dir: path.Dir(file), files: fstest.MapFS{}, asks: asks}
	for name, text := range texts {
		if inside, ok := strings.CutPrefix(name, r.dir+"/"); ok {
			r.files[inside] = &fstest.MapFile{Data: []byte(text)}
		}
	}
	w := workshop.Load(r.files, "workshop.hcl", nil)
	if len(w.Problems) > 0 || len(w.Grades) > 0 {
		t.Fatalf("%s: this test knows workshops that set parts and parameters: %v", r.dir, w.Problems)
	}
	for _, b := range w.Books { // its parameters move limits, not what is noticed
		if !slices.Contains(inEveryDesign, b.Name) {
			t.Fatalf("%s: this test knows no codebooks that a workshop puts in force", r.dir)
		}
	}
	for _, glob := range w.Parts {
		r.parts = append(r.parts, design.PartsGlob{Glob: glob.Glob, From: ".", At: glob.At})
	}
	whole := r.load("", nil)
	names := slices.Clone(inEveryDesign)
	if v, ok := whole.Head.Values["codebooks"]; ok {
		names, r.coded = append(names, v.Texts...), true
	}
	key := strings.Join(names, " ")
	if judges[key] == nil {
		var books []*judge.Book
		for _, name := range names {
			books = append(books, asks[name])
		}
		judges[key] = judge.New(judge.Options{Books: books})
	}
	r.judge = judges[key]
	var err error
	if r.before, err = r.verdicts(whole); err != nil {
		t.Fatal(err)
	}
	return r
}

// verdicts judges a design, by key.
func (r *room) verdicts(d *design.Design) (map[string]verdict.Verdict, error) {
	all, err := r.judge.Judge(context.Background(), facts.New(d))
	if err != nil {
		return nil, err
	}
	byKey := map[string]verdict.Verdict{}
	for _, v := range all {
		byKey[v.Key()] = v
	}
	return byKey, nil
}

// attributes lists what is written in the design and in the parts that it uses.
func (r *room) attributes(t *testing.T) []written {
	t.Helper()
	d := r.load("", nil)
	if len(d.Problems) > 0 {
		t.Fatal(d.Problems)
	}
	s := facts.New(d)
	ids, names := map[source.Range][]string{}, map[source.Range][]string{}
	for _, c := range facts.Collections() {
		for _, subject := range s.Subjects(c.Name) {
			for _, e := range c.Entries {
				if !e.Attribute {
					continue
				}
				id := subject.ID() + "." + e.Name
				if w, ok := s.Work(id); ok && w.At.Valid() {
					ids[w.At] = append(ids[w.At], id)
					names[w.At] = append(names[w.At], c.Name+"."+e.Name)
				}
			}
		}
	}
	var all []written
	var walk func(b *design.Block)
	walk = func(b *design.Block) {
		for name, v := range b.Values {
			span := source.Range{File: v.At.File, Start: v.NameAt.Start, End: v.At.End}
			all = append(all, written{kind: b.Kind.Name, name: name, span: span, ids: ids[v.At], facts: names[v.At]})
		}
		for _, inner := range b.Blocks {
			walk(inner)
		}
	}
	walk(d.Head)
	for _, b := range d.Blocks {
		walk(b)
	}
	for _, byName := range d.Parts {
		for _, b := range byName {
			walk(b)
		}
	}
	slices.SortFunc(all, func(a, b written) int {
		return cmp.Or(cmp.Compare(a.span.File, b.span.File), cmp.Compare(a.span.Start.Byte, b.span.Start.Byte))
	})
	return all
}

// outcome is what became of a design without one attribute.
type outcome struct {
	wrong  []string
	silent bool // no verdict says anything else than before
}

// tryAll takes the attributes out one at a time, on all processors.
func (r *room) tryAll(attributes []written) []outcome {
	found := make([]outcome, len(attributes))
	var group sync.WaitGroup
	workers := runtime.GOMAXPROCS(0)
	for w := range workers {
		group.Go(func() {
			for k := w; k < len(attributes); k += workers {
				found[k] = r.without(attributes[k])
			}
		})
	}
	group.Wait()
	return found
}

func (r *room) without(a written) outcome {
	text := r.files[a.span.File].Data
	d := r.load(a.span.File, slices.Concat(text[:a.span.Start.Byte], text[a.span.End.Byte:]))
	if len(d.Problems) > 0 {
		for _, p := range d.Problems {
			if strings.Contains(p.Message, a.name) {
				return outcome{}
			}
		}
		return outcome{wrong: []string{"the design does not load, and no problem names it: " + d.Problems[0].Error()}}
	}
	after, err := r.verdicts(d)
	if err != nil {
		return outcome{wrong: []string{err.Error()}}
	}
	o := outcome{silent: true}
	for key, was := range r.before {
		now, ok := after[key]
		if !ok {
			o.silent = false // the subject is gone, or another record took its place
			continue
		}
		if saying(&was) != saying(&now) {
			o.silent = false
		}
		if !reliesOn(&was, a) {
			continue
		}
		if brokenAnyway(after, &now) {
			continue
		}
		if why := unspoken(&was, &now, a); why != "" {
			o.wrong = append(o.wrong, key+" "+why)
		}
	}
	for key := range after {
		if _, ok := r.before[key]; !ok {
			o.silent = false
		}
	}
	slices.Sort(o.wrong)
	return o
}

// reliesOn tells whether an attribute is among those that a verdict rested on.
func reliesOn(v *verdict.Verdict, a written) bool {
	return slices.ContainsFunc(v.At, func(at source.Range) bool { return at.File == a.span.File && at.End == a.span.End })
}

// unspoken says what is wrong with a verdict that rested on the attribute which
// is now gone, or "".
func unspoken(was, now *verdict.Verdict, a written) string {
	named := func(ids []string) bool {
		return slices.ContainsFunc(ids, func(id string) bool {
			return slices.ContainsFunc(a.ids, func(own string) bool {
				return id == own || instead[a.key()] != "" && id == strings.TrimSuffix(own, a.name)+instead[a.key()]
			})
		})
	}
	switch now.Outcome {
	case verdict.Unproven:
		if was.Outcome == verdict.Unproven || named(now.Missing) || named(now.Assumed) || assumesMore(was, now, a) {
			return ""
		}
		return "is unproven but names " + strings.Join(now.Missing, ", ")
	case verdict.Breaks:
		return "" // nobody is told that all is well
	case verdict.Void:
		return "is void: " + now.Fault.Message
	}
	if named(now.Missing) || named(now.Assumed) || newcomer(was, now) || assumesMore(was, now, a) {
		return ""
	}
	return fmt.Sprintf("%s as if it were known", now.Outcome)
}

// brokenAnyway tells whether a verdict does not apply for the reason that the
// same rule breaks on the same subject already, on what is still known.
func brokenAnyway(after map[string]verdict.Verdict, now *verdict.Verdict) bool {
	if now.Outcome != verdict.DoesNotApply {
		return false
	}
	for _, v := range after {
		if v.Rule == now.Rule && v.About == now.About && v.Outcome == verdict.Breaks {
			return true
		}
	}
	return false
}

// assumesMore tells whether a verdict now assumes a fact of the subject that the
// attribute belongs to, which it did not assume before: the fact table documents
// defaults of its own there ("strands counted as bare where the run does not
// say").
func assumesMore(was, now *verdict.Verdict, a written) bool {
	return slices.ContainsFunc(now.Assumed, func(id string) bool {
		return !slices.Contains(was.Assumed, id) && slices.ContainsFunc(a.ids, func(own string) bool {
			return strings.HasPrefix(id, own[:strings.LastIndexByte(own, '.')+1])
		})
	})
}

// newcomer tells whether a verdict rests on a place that it did not rest on
// before. The cut leaves all lines and the columns before it where they were.
func newcomer(was, now *verdict.Verdict) bool {
	return slices.ContainsFunc(now.At, func(at source.Range) bool {
		return !slices.ContainsFunc(was.At, func(old source.Range) bool {
			return old.File == at.File && old.Start.Line == at.Start.Line && old.Start.Column == at.Start.Column
		})
	})
}

// saying is all that a verdict says to a person.
func saying(v *verdict.Verdict) string {
	var b strings.Builder
	side := func(m *verdict.Measured) {
		if m == nil {
			return
		}
		fmt.Fprintf(&b, " %s %s %s", m.ID, m.Formula, m.Says)
		for _, number := range []*float64{m.Value, m.AtLeast} {
			if number != nil {
				fmt.Fprintf(&b, " %g", *number)
			}
		}
		if m.Word != nil {
			b.WriteString(" " + *m.Word)
		}
		if m.Yes != nil {
			fmt.Fprintf(&b, " %t", *m.Yes)
		}
	}
	fmt.Fprintf(&b, "%s %s %s %v %v", v.Outcome, v.Message, v.Because, v.Missing, v.Assumed)
	side(v.Is)
	for i := range v.Limits {
		side(&v.Limits[i])
	}
	for i := range v.Also {
		side(&v.Also[i])
	}
	return b.String()
}
