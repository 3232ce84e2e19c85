package fit

import (
	"cmp"
	"math"
	"slices"

	"stringline/lint/verdict"
)

// settle ranks what can be built and groups what is stopped.
func (r *Result) settle(all []*Arrangement) {
	best := 0.0
	for _, a := range all {
		if a.State != Stopped && a.YearlyEnergy != nil {
			best = max(best, *a.YearlyEnergy)
		}
	}
	var stopped []*Arrangement
	for _, a := range all {
		switch a.State {
		case Meets:
			r.Answers = append(r.Answers, a)
		case AfterChanges:
			r.After = append(r.After, a)
		case Waits:
			r.Waiting = append(r.Waiting, a)
		default:
			stopped = append(stopped, a)
		}
	}
	number := 0
	for _, list := range [][]*Arrangement{r.Answers, r.After, r.Waiting} {
		slices.SortStableFunc(list, func(a, b *Arrangement) int { return compareRanks(a, b, best) })
		for _, a := range list {
			number++
			a.Number = number
		}
	}
	r.Stopped = grouped(stopped)
}

// Energies and headrooms that differ by less than a step of these count as equal.
const (
	energyStep   = 0.01 // of the best
	headroomStep = 0.01 // of the limit
)

// compareRanks orders by energy, then headroom, then the conductors' mass. One
// whose year was not computed comes after those whose was.
func compareRanks(a, b *Arrangement, best float64) int {
	energy := func(x *Arrangement) float64 {
		if x.YearlyEnergy == nil || best <= 0 {
			return math.Inf(1)
		}
		return math.Floor((1 - *x.YearlyEnergy/best) / energyStep)
	}
	headroom := func(x *Arrangement) float64 {
		if x.Least == nil {
			return math.Inf(1)
		}
		return -math.Floor(*x.Least.Headroom / headroomStep)
	}
	mass := func(x *Arrangement) float64 {
		if x.ConductorMass == nil {
			return math.Inf(1)
		}
		return *x.ConductorMass
	}
	return cmp.Or(cmp.Compare(energy(a), energy(b)), unranked(a, b), cmp.Compare(headroom(a), headroom(b)),
		cmp.Compare(mass(a), mass(b)), cmp.Compare(a.spare(), b.spare()), compareLayouts(a, b))
}

// unranked orders two without a year by what they are likely to give.
func unranked(a, b *Arrangement) int {
	if a.YearlyEnergy != nil || b.YearlyEnergy != nil {
		return 0
	}
	return -cmp.Compare(a.likely, b.likely)
}

func (a *Arrangement) spare() (n int) {
	for _, p := range a.LeftOver {
		n += p.Count
	}
	return n
}

// compareLayouts gives any two arrangements an order.
func compareLayouts(a, b *Arrangement) int {
	return cmp.Or(cmp.Compare(a.candidate.wiring, b.candidate.wiring), slices.CompareFunc(a.candidate.groups, b.candidate.groups, compareGroups))
}

// ProblemsRule stands for a rule where an arrangement's text could not be read.
const ProblemsRule = "the text of the design"

// grouped puts together what the same rule stops, worst grade first, then the
// largest group. Of several findings the first by grade counts, then the one that
// is furthest past its limit.
func grouped(stopped []*Arrangement) []Group {
	var groups []Group
	for _, a := range stopped {
		slices.SortStableFunc(a.Stops, func(x, y verdict.Verdict) int {
			return cmp.Or(cmp.Compare(x.Grade.Rank(), y.Grade.Rank()), cmp.Compare(past(&x), past(&y)), cmp.Compare(x.Key(), y.Key()))
		})
		g := Group{Rule: ProblemsRule, Title: "The text of the arrangement can be read without an error", Grade: verdict.Stop}
		if len(a.Problems) == 0 && len(a.Stops) > 0 {
			v := &a.Stops[0]
			g = Group{Rule: v.Rule, Title: v.Title, Grade: v.Grade}
		}
		i := slices.IndexFunc(groups, func(o Group) bool { return o.Rule == g.Rule })
		if i < 0 {
			groups, i = append(groups, g), len(groups)
		}
		groups[i].Stopped = append(groups[i].Stopped, a)
	}
	for i := range groups {
		g := &groups[i]
		slices.SortStableFunc(g.Stopped, func(a, b *Arrangement) int { return cmp.Or(compareLayouts(a, b)) })
		for _, a := range g.Stopped {
			if len(a.Stops) == 0 {
				continue
			}
			if v := &a.Stops[0]; g.Nearest == nil || nearer(v, g.Nearest) {
				g.Nearest = v
			}
		}
	}
	slices.SortStableFunc(groups, func(a, b Group) int {
		return cmp.Or(cmp.Compare(a.Grade.Rank(), b.Grade.Rank()), -cmp.Compare(len(a.Stopped), len(b.Stopped)), cmp.Compare(a.Rule, b.Rule))
	})
	return groups
}

// nearer tells that a breach is closer to its limit than another of its rule.
func nearer(a, b *verdict.Verdict) bool {
	switch {
	case a.Headroom != nil && b.Headroom != nil:
		return *a.Headroom > *b.Headroom
	case a.Spare != nil && b.Spare != nil:
		return a.Spare.Value > b.Spare.Value
	}
	return a.Headroom != nil || a.Spare != nil && b.Headroom == nil
}

// past gives the headroom that is left, where there is none in numbers 0: below
// every breach in numbers.
func past(v *verdict.Verdict) float64 {
	if v.Headroom == nil {
		return 0
	}
	return *v.Headroom
}

// besides lists the findings that the design has anyway.
func (f *finder) besides() []verdict.Verdict {
	all := make([]verdict.Verdict, 0, len(f.told))
	for _, v := range f.told {
		all = append(all, v)
	}
	slices.SortFunc(all, func(a, b verdict.Verdict) int { return cmp.Compare(a.Key(), b.Key()) })
	verdict.Sort(all)
	return all
}

// Exit is 0 where an arrangement meets every rule, else 1.
func (r *Result) Exit() int {
	if len(r.Answers) == 0 {
		return 1
	}
	return 0
}
