package judge

import (
	"context"
	"strings"

	"stringline/lint/facts"
	"stringline/lint/verdict"
	"stringline/schema/source"
)

// court judges one design.
type court struct {
	judge  *Judge
	system *facts.System
	values values // nil: the design's own
	places map[string][]source.Range
}

// fact gives a fact of the design or a parameter.
func (c *court) fact(id string) (facts.Fact, bool) {
	if strings.HasPrefix(id, "param.") {
		p, ok := c.judge.parameters[id]
		return p.fact, ok
	}
	return c.system.Fact(id)
}

func (c *court) parameter(id string) (verdict.Parameter, bool) {
	if !strings.HasPrefix(id, "param.") {
		return verdict.Parameter{}, false
	}
	p, ok := c.judge.parameters[id]
	return p.shown, ok
}

func (c *court) assumed(id string) []string {
	f, ok := c.system.Fact(id)
	if !ok {
		return nil
	}
	return f.Assumed
}

// at gives a fact's or subject's places; many verdicts share them.
func (c *court) at(id string) []source.Range {
	r, ok := c.places[id]
	if !ok {
		r = c.system.At(id)
		r = r[:len(r):len(r)]
		c.places[id] = r
	}
	return r
}

func (c *court) bench(rule *Rule) *bench {
	b := &bench{rule: rule, grade: rule.Grade, values: c.values, parameter: c.parameter, assumed: c.assumed, at: c.at}
	if b.values == nil {
		b.values = c
	}
	if g, ok := c.judge.grades[rule.ID]; ok {
		b.grade = g
	}
	return b
}

// book appends one codebook's verdicts.
func (c *court) book(ctx context.Context, b *Book, a *asked, all []verdict.Verdict) ([]verdict.Verdict, error) {
	own := keep(c, a.shelf)
	var left *int // for all rules together
	if !b.Embedded() {
		work := a.left
		left = &work
	}
	for i, name := range b.names {
		bench := c.bench(&b.rules[i])
		bench.values = own
		d, ok := a.rules[name]
		if !ok {
			var err error
			if d, err = b.put(ctx, name, a.structure, bench.values, left); err != nil {
				return nil, err
			}
		}
		all = bench.add(all, &d, c.system)
	}
	return all, nil
}

// all gives the rule's verdicts: one for every record, and what is owed.
func (b *bench) all(d *decoded, s *facts.System) []verdict.Verdict { return b.add(nil, d, s) }

// add appends them.
func (b *bench) add(all []verdict.Verdict, d *decoded, s *facts.System) []verdict.Verdict {
	members := s.Subjects(b.rule.Each)
	fault := d.fault
	for i := range d.records { // one that names nobody may be about any of them
		if d.records[i].about == "" {
			fault = firstFault(fault, d.records[i].fault)
		}
	}
	switch {
	case fault != nil && len(members) == 0:
		return append(all, b.void("system", "", fault))
	case len(members) == 0 && len(d.records) == 0:
		none := "the design has no " + strings.ReplaceAll(b.rule.Each, "_", " ")
		return append(all, b.doesNotApply("system", "", none))
	}
	if fault != nil || len(members) > 0 && d.reading != nil && d.reading.unknown {
		for _, m := range members {
			if fault != nil {
				all = append(all, b.void(m.ID(), "", fault))
				continue
			}
			all = append(all, b.unprovenBy(m.ID(), d.reading))
		}
		return all
	}
	owed := map[string]bool{}
	for _, m := range members {
		owed[m.ID()] = true
	}
	type key struct{ about, which string }
	times := map[key]int{}
	for i := range d.records {
		times[key{d.records[i].about, d.records[i].which}]++
	}
	told := map[key]bool{}
	for i := range d.records {
		rec := &d.records[i]
		k := key{rec.about, rec.which}
		if told[k] {
			continue
		}
		told[k] = true
		delete(owed, rec.about)
		if times[k] > 1 {
			all = append(all, b.void(rec.about, rec.which, faultAt(b.rule.At, "the rule made %d records about %s that differ: tell them apart by which", times[k], rec.about)))
			continue
		}
		all = append(all, verdict.Verdict{})
		b.one(&all[len(all)-1], rec, s, d.reading)
	}
	for _, m := range members {
		if owed[m.ID()] {
			all = append(all, b.void(m.ID(), "", faultAt(b.rule.At, "the rule made no record about %s: it is undefined there", m.ID())))
		}
	}
	return all
}

// one judges a record that stands alone for its subject, in v.
func (b *bench) one(v *verdict.Verdict, rec *record, s *facts.System, r *reading) {
	subject, ok := s.Subject(rec.about)
	if !ok || subject.Collection().Name != b.rule.Each {
		f := rec.fault
		if f == nil {
			f = faultAt(b.rule.At, "a record is about %s, which is none of %s", quote(rec.about), b.rule.Each)
		}
		if !ok {
			*v = b.void("system", rec.about, f)
			return
		}
		*v = b.void(rec.about, rec.which, f)
		return
	}
	b.judge(v, rec)
	if r != nil { // what the rule read by itself counts too
		b.rest(v, r.from)
	}
}
