package fit

import (
	"cmp"
	"math"
	"slices"
)

// The sensible layouts, one after the other.

// Bounds of what is sensible; see the package's comment.
const (
	voltageApart = 0.15
	currentApart = 0.25
)

// mostLayouts bounds how many layouts are thought of before the best are chosen,
// mostSteps how many groups are tried on the way: most of them may be left out as
// not sensible, and count for nothing.
const (
	mostLayouts = 20000
	mostSteps   = 5_000_000
)

// enumerate lists the sensible layouts, without the hopeless where asked.
func (f *finder) enumerate(hopeful bool) *enumeration {
	e := &enumeration{finder: f, hopeful: hopeful, left: make([]int, len(f.kinds)), groups: make([][]group, len(f.places))}
	for i, k := range f.kinds {
		e.left[i] = k.count
	}
	e.patterns = f.patterns()
	e.from(0)
	return e
}

// patterns lists the sensible strings: of one kind by kind and length, then those
// of unlike panels.
func (f *finder) patterns() [][]int {
	var all, mixed [][]int
	for i, k := range f.kinds {
		for n := 1; n <= k.count; n++ {
			p := make([]int, len(f.kinds))
			p[i] = n
			all = append(all, p)
		}
	}
	p := make([]int, len(f.kinds))
	var walk func(i int)
	walk = func(i int) {
		if len(mixed) >= mostLayouts {
			return
		}
		if i == len(p) {
			if f.mixes(p) {
				mixed = append(mixed, slices.Clone(p))
			}
			return
		}
		for n := 0; n <= f.kinds[i].count; n++ {
			p[i] = n
			if n == 1 && !f.currentsAgree(p) { // nor would more of this kind, nor of any other
				break
			}
			walk(i + 1)
		}
		p[i] = 0
	}
	walk(0)
	slices.SortStableFunc(mixed, func(a, b []int) int {
		return cmp.Compare((&group{series: a}).count(), (&group{series: b}).count())
	})
	return append(all, mixed...)
}

// mixes tells a string of two or more kinds whose currents agree.
func (f *finder) mixes(p []int) bool {
	return (&group{series: p}).kinds() > 1 && f.currentsAgree(p)
}

// currentsAgree tells that the panels of a string are close enough in current.
func (f *finder) currentsAgree(p []int) bool {
	least, most := math.Inf(1), 0.0
	for i, n := range p {
		if a := f.kinds[i].imp; n > 0 && a > 0 {
			least, most = min(least, a), max(most, a)
		}
	}
	return most == 0 || most <= least*(1+currentApart)
}

// enumeration walks over the places and gives each its groups.
type enumeration struct {
	*finder
	patterns [][]int
	left     []int
	groups   [][]group
	found    [][][]group
	steps    int
	more     bool
	hopeful  bool
}

// from fills the places from i on.
func (e *enumeration) from(i int) {
	if e.more {
		return
	}
	if i == len(e.places) {
		e.keep()
		return
	}
	e.fill(i, 0)
}

// fill adds groups to a place, of patterns from the next on, or goes on.
func (e *enumeration) fill(i, next int) {
	e.from(i + 1)
	if e.more || len(e.groups[i]) == len(e.kinds) {
		return
	}
	for n := next; n < len(e.patterns); n++ {
		if e.steps++; e.steps > mostSteps {
			e.more = true
			return
		}
		g := group{series: e.patterns[n]}
		if e.twice(i, &g) {
			continue
		}
		for g.parallel = 1; e.take(&g, 1); g.parallel++ {
			if !e.agrees(i, &g) || e.mirrored(i, &g) || e.hopeful && e.hopeless(&e.places[i], &g) {
				e.take(&g, -g.parallel)
				break
			}
			e.groups[i] = append(e.groups[i], g)
			e.fill(i, n+1)
			e.groups[i] = e.groups[i][:len(e.groups[i])-1]
		}
		if e.more {
			return
		}
	}
}

// take takes n strings of a group from what is left, or gives them back. Where
// there are not enough it gives all that the group had back.
func (e *enumeration) take(g *group, n int) bool {
	if n > 0 {
		for k, c := range g.series {
			if e.left[k] < n*c {
				for k, c := range g.series {
					e.left[k] += (g.parallel - 1) * c
				}
				return false
			}
		}
	}
	for k, c := range g.series {
		e.left[k] -= n * c
	}
	return true
}

// twice tells that the place has a group of just these kinds.
func (e *enumeration) twice(i int, g *group) bool {
	return slices.ContainsFunc(e.groups[i], func(o group) bool {
		for k := range g.series {
			if (g.series[k] > 0) != (o.series[k] > 0) {
				return false
			}
		}
		return true
	})
}

// agrees tells that the strings on an input are close enough in voltage.
func (e *enumeration) agrees(i int, g *group) bool {
	own := e.sum(g, func(k *kind) float64 { return k.vmp })
	for j := 0; j <= i; j++ {
		if e.places[j].charger != e.places[i].charger || e.places[j].input != e.places[i].input {
			continue
		}
		for _, o := range e.groups[j] {
			other := e.sum(&o, func(k *kind) float64 { return k.vmp })
			if own > 0 && other > 0 && max(own, other) > min(own, other)*(1+voltageApart) {
				return false
			}
		}
	}
	return true
}

// mirrored tells that with this group the layout is the mirror image of another: of
// like places the earlier has the larger share. More strings, or more groups behind
// this one, would not change that.
func (e *enumeration) mirrored(i int, g *group) bool {
	for j := range i {
		if e.places[j].class == e.places[i].class && compareGroups(e.groups[j], append(slices.Clip(e.groups[i]), *g)) < 0 {
			return true
		}
	}
	return false
}

// keep notes a layout unless it is empty.
func (e *enumeration) keep() {
	if !slices.ContainsFunc(e.groups, func(at []group) bool { return len(at) > 0 }) {
		return
	}
	if len(e.found) >= mostLayouts {
		e.more = true
		return
	}
	kept := make([][]group, len(e.groups))
	for i, at := range e.groups {
		kept[i] = slices.Clone(at)
	}
	e.found = append(e.found, kept)
}

func compareGroups(a, b []group) int {
	return slices.CompareFunc(a, b, func(x, y group) int {
		return cmp.Or(cmp.Compare(x.parallel*x.count(), y.parallel*y.count()), slices.Compare(x.series, y.series), cmp.Compare(x.parallel, y.parallel))
	})
}
