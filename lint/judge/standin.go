package judge

import (
	"encoding/json"
	"errors"
	"fmt"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"stringline/lint/facts"
	"stringline/schema/design"
	"stringline/schema/quantity"
	"stringline/schema/source"
)

// standIns are a design's values with a test's own in place of some derived ones.
type standIns struct {
	values
	set map[string]facts.Fact
}

func (s *standIns) fact(id string) (facts.Fact, bool) {
	if f, ok := s.set[id]; ok {
		return f, true
	}
	return s.values.fact(id)
}

// standing is an example with a test's own values put into it, kept.
type standing struct {
	system *facts.System
	set    map[string]facts.Fact
}

// standIn puts a test's own values into an example. undo takes them out again;
// the system must not be used after it.
func (t *bookTest) standIn(key string, e *example, operand *ast.Term) (s *facts.System, set map[string]facts.Fact, undo func(), err error) {
	if t.standing == nil {
		if set, err = readStandIns(operand, e.structure.leaves, e.system); err != nil {
			return nil, nil, nil, err
		}
		s, undo = write(e.system, set)
		return s, set, undo, nil
	}
	key += "\n" + operand.String()
	kept := t.standing[key]
	if kept == nil { // the values stay in a design of their own
		own := facts.New(t.book.parseExample(e.design, e.parts))
		if set, err = readStandIns(operand, e.structure.leaves, own); err != nil {
			return nil, nil, nil, err
		}
		own, _ = write(own, set)
		kept = &standing{system: own, set: set}
		t.standing[key] = kept
	}
	return kept.system, kept.set, func() {}, nil
}

// readStandIns reads the values that a test puts in place of an example's.
func readStandIns(operand *ast.Term, leaves map[string]leaf, s *facts.System) (map[string]facts.Fact, error) {
	o, ok := operand.Value.(ast.Object)
	if !ok {
		return nil, errors.New("the third operand is an object: values by fact id")
	}
	set := map[string]facts.Fact{}
	var wrong error
	o.Foreach(func(k, v *ast.Term) {
		id, ok := k.Value.(ast.String)
		l, known := leaves[string(id)]
		if !ok || !known {
			near := source.Nearest(string(id), sortedKeys(leaves))
			if near != "" {
				near = fmt.Sprintf(" (did you mean %q?)", near)
			}
			wrong = fmt.Errorf("there is no fact %s in the example%s", k, near)
			return
		}
		f, err := standIn(string(id), l, v)
		if err == nil {
			if w, ok := s.Work(string(id)); ok && f.Known && f.Kind == facts.Word {
				err = oneOfWords(w.Entry.Words(), f.Word)
			}
		}
		if err != nil {
			wrong = fmt.Errorf("%s: %w", string(id), err)
			return
		}
		set[string(id)] = f
	})
	return set, wrong
}

func oneOfWords(words []string, w string) error {
	for _, known := range words {
		if known == w {
			return nil
		}
	}
	if len(words) == 0 {
		return nil
	}
	return fmt.Errorf("%q is none of its words (%s)", w, strings.Join(words, ", "))
}

// standIn reads one value as the fact of an id.
func standIn(id string, l leaf, v *ast.Term) (facts.Fact, error) {
	f := facts.Fact{ID: id, Unit: l.text, Known: true}
	switch l.kind {
	case word:
		f.Kind = facts.Word
	case yesNo:
		f.Kind = facts.YesNo
	case list:
		f.Kind = facts.List
	}
	switch x := v.Value.(type) {
	case ast.Null:
		f.Known, f.Missing = false, []string{id}
		return f, nil
	case ast.String:
		switch l.kind {
		case word:
			f.Word = string(x)
			return f, nil
		case number:
			q, err := quantity.ParseAs(string(x), l.text)
			f.SI = q.SI
			return f, err
		}
	case ast.Number:
		if l.kind == number && l.unit.Symbol == "" {
			n, err := json.Number(x).Float64()
			f.SI = n
			return f, err
		}
	case ast.Boolean:
		if l.kind == yesNo {
			f.Yes = bool(x)
			return f, nil
		}
	case *ast.Array:
		if l.kind == list {
			return listStandIn(f, l, x)
		}
	}
	return f, fmt.Errorf("%s is no value of it, which is %s in %q", v, l.kind, l.text)
}

func listStandIn(f facts.Fact, l leaf, a *ast.Array) (facts.Fact, error) {
	for i := range a.Len() {
		one, err := standIn(f.ID, leaf{kind: number, unit: l.unit, text: l.text}, a.Elem(i))
		if err != nil {
			return f, err
		}
		f.List = append(f.List, one.SI)
	}
	return f, nil
}

// write puts the stand-ins of attributes into the design's blocks, so that what
// is derived from them follows, and gives the system of the design so changed.
// What stays in set are stand-ins of derived facts, which stand by themselves.
// undo puts the design back; the system must not be used after it.
func write(s *facts.System, set map[string]facts.Fact) (changed *facts.System, undo func()) {
	var undone []func()
	for id, f := range set {
		w, ok := s.Work(id)
		if !ok || !w.Entry.Attribute {
			continue
		}
		subject, ok := s.Subject(strings.TrimSuffix(id, "."+w.Entry.Name))
		if !ok || subject.Block() == nil {
			continue
		}
		if values, name, back := holder(subject.Block(), w.Entry.Name); values != nil {
			was, had := values[name]
			values[name] = writtenAs(w.Entry.Language, &f)
			undone = append(undone, func() {
				if had {
					values[name] = was
				} else {
					delete(values, name)
				}
				back()
			})
			delete(set, id)
		}
	}
	return facts.New(s.Design()), func() {
		for i := len(undone) - 1; i >= 0; i-- {
			undone[i]()
		}
	}
}

// writtenAs makes the attribute's value. An unknown one is as one that was
// written and could not be read: no default takes its place.
func writtenAs(a *design.Attribute, f *facts.Fact) *design.Value {
	return &design.Value{Attribute: a, Bad: !f.Known, SI: f.SI, Text: f.Word, Yes: f.Yes, List: f.List}
}

// holder finds the values of the block that an attribute stands in: the block's
// own, those of a group inside it, or its answers to a codebook. A group that is
// not there is put in, and taken out again by back.
func holder(b *design.Block, name string) (values map[string]*design.Value, key string, back func()) {
	back = func() {}
	group, leaf, grouped := strings.Cut(name, ".")
	switch {
	case !grouped:
		values, key = b.Values, name
	case group == "declared":
		book, attribute, _ := strings.Cut(leaf, ".")
		values, key = b.Declared[book], attribute // nil where the block answers nothing
	default:
		inner := b.Child(group)
		if inner == nil {
			kind := design.KindOf(group)
			if kind == nil {
				return nil, "", back
			}
			inner = &design.Block{Kind: kind, Parent: b, Values: map[string]*design.Value{}}
			b.Blocks = append(b.Blocks, inner)
			back = func() { b.Blocks = b.Blocks[:len(b.Blocks)-1] }
		}
		values, key = inner.Values, leaf
	}
	return values, key, back
}
