package judge

import (
	"context"
	"maps"
	"slices"

	"stringline/lint/facts"
)

// Reads tells which facts and parameters each rule asks for on a design, by rule
// id: the leaves of its records' formulas, sorted. Nothing is evaluated. Rules
// that call fact.value are not among them: see [Judge.ByValue].
func (j *Judge) Reads(ctx context.Context, s *facts.System) (map[string][]string, error) {
	all := map[string][]string{}
	for _, b := range j.books {
		st := buildStructure(b.codebook, s)
		found, err := ask(ctx, b, st)
		if err != nil {
			return nil, err
		}
		for name, d := range found.rules {
			ids := map[string]bool{}
			for i := range d.records {
				d.records[i].leaves(ids)
			}
			all[b.Name()+"."+name] = slices.Sorted(maps.Keys(ids))
		}
	}
	return all, nil
}

// ByValue lists the rules, by id, that call fact.value: what they read hangs on the
// values that they read, so that [Judge.Reads] does not tell it.
func (j *Judge) ByValue() map[string]bool {
	all := map[string]bool{}
	for _, b := range j.books {
		for name := range b.byValue {
			all[b.Name()+"."+name] = true
		}
	}
	return all
}

func (r *record) leaves(into map[string]bool) {
	for _, f := range slices.Concat([]*formula{r.is, r.when}, r.limits, r.also) {
		f.leaves(into)
	}
}

func (f *formula) leaves(into map[string]bool) {
	if f == nil {
		return
	}
	if f.op == "leaf" {
		into[f.id] = true
	}
	for _, part := range f.of {
		part.leaves(into)
	}
}
