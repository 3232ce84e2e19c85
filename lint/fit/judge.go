package fit

import (
	"cmp"
	"context"
	"maps"
	"slices"
	"strings"

	"stringline/lint"
	"stringline/lint/facts"
	"stringline/lint/verdict"
)

// restingRules finds the rules that rest on the panels: of what they read, some
// fact follows from strings. One that reads values by itself may read any.
func (f *finder) restingRules(ctx context.Context) error {
	reads, byValue, err := f.bench.Reads(ctx, f.base)
	if err != nil {
		return err
	}
	f.rests = byValue
	known := map[string]bool{}
	for rule, ids := range reads {
		f.rests[rule] = f.rests[rule] || slices.ContainsFunc(ids, func(id string) bool {
			rests, asked := known[id]
			if !asked {
				rests = f.restsOnStrings(id)
				known[id] = rests
			}
			return rests
		})
	}
	return nil
}

// restsOnStrings walks down a fact's workings. What a controller, a battery or a
// setting says is none of the panels', and of strings their runs are not; how many
// panels there are and of which kind is.
func (f *finder) restsOnStrings(id string) bool {
	root, ok := f.base.System.Work(id)
	if !ok {
		return false
	}
	seen := map[*facts.Work]bool{}
	var walk func(*facts.Work) bool
	walk = func(w *facts.Work) bool {
		if seen[w] {
			return false
		}
		seen[w] = true
		switch w.Entry.Collection {
		case "strings", "pv_inputs", "panels":
			return true
		case "arrays", "chargers", "system":
			// A formula may give up before it reads its strings.
			if !w.Entry.Attribute && !w.Fact.Known {
				return true
			}
		}
		return slices.ContainsFunc(w.Inputs, walk)
	}
	return walk(root)
}

// own tells a subject that hangs on the panels: the PV side with its runs and
// devices, the chargers, the system as a whole. Where the bank stays as it is all
// that rests on the panels counts, whoever it is about.
func own(about string) bool {
	kind, rest, _ := strings.Cut(about, ".")
	switch kind {
	case "cable_run", "protection", "disconnect":
		kind, _, _ = strings.Cut(rest, ".")
		return kind == "array" || kind == "string"
	}
	return slices.Contains([]string{"pv_input", "array", "string", "charger", "system"}, kind)
}

// judge tries one candidate.
func (f *finder) judge(ctx context.Context, c candidate, year bool) (*Arrangement, error) {
	a := f.describe(c)
	text, err := f.text(c, false)
	if err != nil {
		return nil, err
	}
	found, err := f.bench.Judge(ctx, lint.Trial{Texts: map[string][]byte{f.base.File: text}, WithoutYear: !year})
	if err != nil {
		return nil, err
	}
	a.Problems = found.Problems
	moved := slices.ContainsFunc(a.Banks, func(w BankWiring) bool { return !w.AsIs })
	notPut, waits := map[string]bool{}, false
	beside := map[string]verdict.Verdict{}
	for i := range found.Verdicts {
		v := &found.Verdicts[i]
		f.noteLeast(a, v)
		switch {
		case v.Outcome == verdict.Waived && f.rests[v.Rule]:
			a.Waived = append(a.Waived, *v)
		case !v.Finding():
		case lint.Awaits(v) && !year:
			notPut[v.Rule] = true
			waits = waits || v.Grade != verdict.Advise
		case v.Grade == verdict.Advise && v.Outcome != verdict.Void:
			a.Advice++
		case f.rests[v.Rule] && own(v.About):
			a.Stops = append(a.Stops, *v)
		case f.had(v):
			beside[v.Key()] = *v
		case moved:
			a.MustChange = append(a.MustChange, *v)
		default:
			a.Stops = append(a.Stops, *v)
		}
	}
	a.NotPut = slices.Sorted(maps.Keys(notPut))
	switch {
	case len(a.Problems) > 0 || len(a.Stops) > 0 || len(found.Verdicts) == 0:
		a.State = Stopped
	case len(a.MustChange) > 0:
		a.State = AfterChanges
	case waits:
		a.State = Waits
	default:
		a.State = Meets
	}
	if found.System != nil {
		f.figures(a, found.System, year)
	}
	f.mutex.Lock()
	maps.Copy(f.told, beside)
	f.mutex.Unlock()
	return a, nil
}

// had tells that the design as it stands has the same finding, with the same
// figures.
func (f *finder) had(v *verdict.Verdict) bool {
	before := f.found[v.Key()]
	return before != nil && before.Outcome == v.Outcome && before.Because == v.Because && slices.Equal(before.Missing, v.Missing) && verdict.SameFigures(before, v)
}

// noteLeast keeps the verdict on the panels' limits that has the least headroom.
func (f *finder) noteLeast(a *Arrangement, v *verdict.Verdict) {
	if v.Outcome != verdict.Meets || v.Headroom == nil || v.Grade == verdict.Advise || !f.rests[v.Rule] || !own(v.About) {
		return
	}
	if a.Least == nil || *v.Headroom < *a.Least.Headroom {
		least := *v
		a.Least = &least
	}
}

// figures reads what arrangements are ranked by.
func (f *finder) figures(a *Arrangement, s *facts.System, year bool) {
	known := func(id string) *float64 {
		if x, ok := s.Fact(id); ok && x.Known {
			return &x.SI
		}
		return nil
	}
	a.ConductorMass = known("system.pv_conductor_mass")
	if year {
		a.YearlyEnergy = known("system.yearly_yield")
		if sky, ok := s.Fact("site.sky"); ok && sky.Known {
			a.Sky = sky.Word
		}
	}
	// What an array gives beyond its controller's full power is worth less: it
	// comes in mornings and winter only.
	const beyond = 0.3
	power := map[string]float64{}
	for _, i := range s.Subjects("pv_inputs") {
		if watts := known(i.ID() + ".mpp_stc"); watts != nil {
			power[i.Linked("charger")[0].ID()] += *watts
		}
	}
	for charger, watts := range power {
		full := watts
		if limit := known(charger + ".full_power_nominal"); limit != nil {
			full = min(watts, *limit)
		}
		a.likely += full + beyond*(watts-full)
	}
}

// describe puts a candidate in words.
func (f *finder) describe(c candidate) *Arrangement {
	a := &Arrangement{candidate: c, Banks: f.wirings[c.wiring], LeftOver: f.leftOver(c.groups), AsIs: c.wiring == 0 && f.isAsIs(c.groups)}
	for i, at := range c.groups {
		p := &f.places[i]
		for _, g := range at {
			s := Strings{Array: p.name, Charger: p.charger, Input: p.input, Parallel: g.parallel}
			if p.copied {
				s.CopyOf = p.array.Name
			}
			for k, n := range g.series {
				if n > 0 {
					s.Series = append(s.Series, Panels{f.kinds[k].name, n})
				}
			}
			a.Strings = append(a.Strings, s)
		}
	}
	return a
}

// years gives the likeliest arrangements a year of sun, in turn those of each way
// of wiring the banks, and has the rules that need one judge them.
func (f *finder) years(ctx context.Context, all []*Arrangement, r *Result) error {
	byWiring := map[int][]int{}
	for i, a := range all {
		if a.State != Stopped {
			byWiring[a.candidate.wiring] = append(byWiring[a.candidate.wiring], i)
		}
	}
	for _, list := range byWiring {
		slices.SortStableFunc(list, func(x, y int) int {
			return cmp.Or(cmp.Compare(changes(all[x]), changes(all[y])), -cmp.Compare(all[x].likely, all[y].likely), compareLayouts(all[x], all[y]))
		})
	}
	var chosen []int
	for turn := 0; len(chosen) < f.options.Years; turn++ {
		before := len(chosen)
		for w := range f.wirings {
			if list := byWiring[w]; turn < len(list) && len(chosen) < f.options.Years {
				chosen = append(chosen, list[turn])
			}
		}
		if len(chosen) == before {
			break
		}
	}
	of := make([]candidate, len(chosen))
	for i, n := range chosen {
		of[i] = all[n].candidate
	}
	again, err := f.judgeAll(ctx, of, true)
	if err != nil {
		return err
	}
	for i, n := range chosen {
		all[n] = again[i]
	}
	r.Years = len(chosen)
	return nil
}

// changes is 1 for what needs more changed than the panels.
func changes(a *Arrangement) int {
	if a.State == AfterChanges {
		return 1
	}
	return 0
}
