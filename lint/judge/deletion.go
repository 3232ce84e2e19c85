package judge

import (
	"context"
	"fmt"
	"maps"
	"slices"
	"strings"

	"stringline/lint/facts"
	"stringline/lint/verdict"
	"stringline/schema/design"
	"stringline/schema/source"
)

// deletion takes every attribute that the rule's verdicts on an example relied
// on out of the files, one at a time. Then one of these must hold, or something
// was guessed in silence:
//
//   - the verdict is unproven, or breaks on what is still known, and names the
//     attribute among what is missing
//   - the design does not load and says so in the attribute's name
//   - a documented default stands under assumed, by the attribute's name
//   - another attribute that is written down has taken its place, as the fact's
//     or rule's words say ("low_cutoff, else dc_min"): the verdict now rests on
//     one that it did not rest on before
//   - logic decided without it (one yes settles fact.any; a bound that is known
//     settles fact.more_than), on other attributes that are written down
func (t *bookTest) deletion(ctx context.Context, rule string, e *example) {
	at := atLine(e.file, 1)
	before, relied, _, err := t.ruleVerdicts(ctx, rule, e.system)
	if err != nil {
		t.fail(rule, "deletion", at, "%v", err)
		return
	}
	failed := false
	tried := map[source.Range]*trial{} // several verdicts rest on one attribute
	for i := range before {
		v := &before[i]
		if v.Outcome != verdict.Meets && v.Outcome != verdict.Breaks {
			continue
		}
		written := attributes(e.system, relied[v.Key()])
		for _, a := range written {
			if why := t.without(ctx, rule, e, v, a, written, tried); why != "" {
				failed = true
				t.fail(rule, "deletion", at, "%s design, %s %s: without %s it %s", e.name, v.Rule, v.About, a.id, why)
			}
		}
	}
	if !failed {
		t.pass(rule, "deletion of "+e.name, at)
	}
}

// ruleVerdicts judges a design by one rule, and tells which leaves each verdict
// rests on and what logic did without.
func (t *bookTest) ruleVerdicts(ctx context.Context, rule string, s *facts.System) (vs []verdict.Verdict, relied, despite map[string][]string, err error) {
	relied, despite = map[string][]string{}, map[string][]string{}
	c := &court{judge: t.judge, system: s, places: map[string][]source.Range{}}
	bench := c.bench(t.book.rule(rule))
	bench.relied = func(v *verdict.Verdict, ids []string) {
		relied[v.Key()] = merge(relied[v.Key()], ids)
	}
	bench.went = func(v *verdict.Verdict, missing []string) { despite[v.Key()] = missing }
	key, st := s.Structure(), t.structure(s)
	d, known := t.answers[rule+"\n"+key]
	if !known {
		if d, err = t.book.put(ctx, rule, st, bench.values, nil); err != nil {
			return nil, nil, nil, err
		}
		if !t.book.byValue[rule] {
			t.answers[rule+"\n"+key] = d
		}
	}
	return bench.all(&d, s), relied, despite, nil
}

// attribute is one attribute as it stands in an example's files.
type attribute struct {
	id string // its fact
	at source.Range
}

// attributes lists the attributes below some facts that are written down.
func attributes(s *facts.System, ids []string) []attribute {
	found := map[string]source.Range{}
	seen := map[*facts.Work]bool{}
	var walk func(*facts.Work)
	walk = func(w *facts.Work) {
		if seen[w] {
			return
		}
		seen[w] = true
		if w.Entry.Attribute && w.At.Valid() {
			found[w.Fact.ID] = w.At
		}
		for _, in := range w.Inputs {
			walk(in)
		}
	}
	for _, id := range ids {
		if w, ok := s.Work(id); ok {
			walk(w)
		}
	}
	var all []attribute
	for _, id := range slices.Sorted(maps.Keys(found)) {
		all = append(all, attribute{id: id, at: found[id]})
	}
	return all
}

// trial is an example without one attribute: what is wrong with the design, or
// how the rule judges it.
type trial struct {
	problems       source.Problems
	system         *facts.System
	verdicts       []verdict.Verdict
	relied, missed map[string][]string
	err            error
}

// try loads and judges the example without what stands in a span.
func (t *bookTest) try(ctx context.Context, rule string, e *example, span source.Range) *trial {
	text, parts := e.design, e.parts
	if span.File == partsFile {
		parts = cut(parts, span)
	} else {
		text = cut(text, span)
	}
	d := t.book.parseExample(text, parts)
	if len(d.Problems) > 0 {
		return &trial{problems: d.Problems}
	}
	r := &trial{system: facts.New(d)}
	r.verdicts, r.relied, r.missed, r.err = t.ruleVerdicts(ctx, rule, r.system)
	return r
}

// without judges the example without one attribute and says what is wrong with
// the outcome, or "". What was tried is kept in tried, by its span.
func (t *bookTest) without(ctx context.Context, rule string, e *example, was *verdict.Verdict, a attribute, written []attribute, tried map[source.Range]*trial) string {
	span, ok := assignment(e.system.Design(), a.at)
	if !ok {
		return "could not be tried: its place " + a.at.String() + " was not found"
	}
	r := tried[span]
	if r == nil {
		r = t.try(ctx, rule, e, span)
		tried[span] = r
	}
	name := a.id[strings.LastIndexByte(a.id, '.')+1:]
	for _, p := range r.problems {
		if strings.Contains(p.Message, name) {
			return ""
		}
	}
	if len(r.problems) > 0 {
		return "does not load for another reason: " + r.problems[0].Error()
	}
	if r.err != nil {
		return r.err.Error()
	}
	s, vs, relied, despite := r.system, r.verdicts, r.relied, r.missed
	for i := range vs {
		v := &vs[i]
		named := slices.Contains(v.Missing, a.id)
		// A rule that read the unknown by itself is unproven on the subject as
		// a whole, whatever it would have told apart by which.
		whole := t.book.byValue[rule] && named && v.Which == "" && v.About == was.About
		if v.Key() != was.Key() && !whole {
			continue
		}
		switch {
		case named && v.Outcome == verdict.Unproven, named && v.Outcome == verdict.Breaks, slices.Contains(v.Assumed, a.id):
			return ""
		case v.Outcome != verdict.Void && (slices.Contains(despite[v.Key()], a.id) || newcomer(written, attributes(s, relied[v.Key()]))):
			return ""
		case v.Outcome == verdict.Unproven:
			return fmt.Sprintf("is unproven but names %s", strings.Join(v.Missing, ", "))
		}
		return outcomeWords(v)
	}
	return "gives no verdict at all"
}

// newcomer tells whether a verdict rests on a written attribute that it did not
// rest on before.
func newcomer(before, after []attribute) bool {
	return slices.ContainsFunc(after, func(a attribute) bool {
		return !slices.ContainsFunc(before, func(b attribute) bool { return b.id == a.id })
	})
}

// assignment finds the whole of the assignment whose value stands at a place.
func assignment(d *design.Design, at source.Range) (source.Range, bool) {
	var found source.Range
	var walk func(*design.Block)
	try := func(v *design.Value) {
		if v.At == at || v.NameAt == at {
			found = source.Range{File: at.File, Start: v.NameAt.Start, End: v.At.End}
		}
	}
	walk = func(b *design.Block) {
		for _, v := range b.Values {
			try(v)
		}
		for _, answers := range b.Declared {
			for _, v := range answers {
				try(v)
			}
		}
		for _, inner := range b.Blocks {
			walk(inner)
		}
	}
	if d.Head != nil {
		walk(d.Head)
	}
	for _, b := range d.Blocks {
		walk(b)
	}
	for _, byName := range d.Parts {
		for _, b := range byName {
			walk(b)
		}
	}
	return found, found.Valid()
}

func cut(text []byte, span source.Range) []byte {
	if span.Start.Byte < 0 || span.End.Byte > len(text) || span.Start.Byte > span.End.Byte {
		return text
	}
	return slices.Concat(text[:span.Start.Byte], text[span.End.Byte:])
}
