package judge

import (
	"context"
	"maps"
	"slices"

	"stringline/lint/facts"
)

// Reads tells which facts and parameters each rule asks for on a design, by rule
// id: the leaves of its records' formulas, sorted. Nothing is evaluated. A rule
// that calls fact.value has only the leaves of the records that it makes while
// every value is unknown.
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
