package fit

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"
)

// Which arrangements are tried, and in which order.

// Bounds of what is sensible; see the package's comment.
const (
	voltageApart = 0.15
	currentApart = 0.25
)

// mostLayouts bounds how many layouts are thought of before the best are chosen.
const mostLayouts = 20000

// group is like strings: how many of each kind of panel in series, and how many
// such strings.
type group struct {
	series   []int
	parallel int
	foreign  bool // it holds a kind of panel that is not in hand
}

func (g *group) same(o *group) bool {
	return g.parallel == o.parallel && slices.Equal(g.series, o.series) && g.foreign == o.foreign
}

// count is how many panels stand in series.
func (g *group) count() (n int) {
	for _, c := range g.series {
		n += c
	}
	return n
}

// candidate is one arrangement to be tried: groups for each place, and a way of
// wiring the banks.
type candidate struct {
	groups [][]group
	wiring int
}

// candidates gives those to be judged: at most as many as the options allow, the
// likeliest. possible counts all that were thought of, more tells that there are
// others.
func (f *finder) candidates() (chosen []candidate, possible int, more bool) {
	e := f.enumerate(false)
	if e.more {
		e = f.enumerate(true)
		e.more = true // the hopeless ones
	}
	if own := f.asItStands(); own != nil && !slices.ContainsFunc(e.found, func(g [][]group) bool { return f.isAsIs(g) }) {
		e.found = append(e.found, own)
	}
	type ranked struct {
		candidate
		key [3]int
	}
	var all []ranked
	for _, groups := range e.found {
		spare, parts := f.spare(groups), 0
		for _, at := range groups {
			for _, g := range at {
				parts += 1 + len(g.series) - strings.Count(fmt.Sprint(g.series), "0")
			}
		}
		for w := range f.wirings {
			key := [3]int{f.unlikely(groups, f.wirings[w]), spare, parts}
			all = append(all, ranked{candidate{groups, w}, key})
		}
	}
	slices.SortStableFunc(all, func(a, b ranked) int {
		return cmp.Or(cmp.Compare(a.key[0], b.key[0]), cmp.Compare(a.key[1], b.key[1]), cmp.Compare(a.key[2], b.key[2]))
	})
	possible = len(all)
	all = all[:min(len(all), f.options.Most)]
	// Those of one structure follow each other: what rules answer is remembered
	// for so many structures only.
	structure := make(map[int]string, len(all))
	for i := range all {
		structure[i] = f.structure(all[i].groups)
	}
	order := make([]int, len(all))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return cmp.Compare(structure[a], structure[b]) })
	for _, i := range order {
		chosen = append(chosen, all[i].candidate)
	}
	return chosen, possible, e.more
}

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

// asItStands gives the design's own layout; nil where it has panels that are not
// in hand, or more of them.
func (f *finder) asItStands() [][]group {
	left := make([]int, len(f.kinds))
	groups := make([][]group, len(f.places))
	for i := range f.places {
		for _, g := range f.places[i].asIs {
			if g.foreign {
				return nil
			}
			for k, n := range g.series {
				left[k] += n * g.parallel
			}
		}
		groups[i] = f.places[i].asIs
	}
	for k, n := range left {
		if n > f.kinds[k].count {
			return nil
		}
	}
	return groups
}

// isAsIs tells the design's own layout.
func (f *finder) isAsIs(groups [][]group) bool {
	for i := range f.places {
		if !sameGroups(groups[i], f.places[i].asIs) {
			return false
		}
	}
	return true
}

// sameGroups compares groups in any order.
func sameGroups(a, b []group) bool {
	if len(a) != len(b) {
		return false
	}
	rest := slices.Clone(b)
	for _, g := range a {
		i := slices.IndexFunc(rest, func(o group) bool { return g.same(&o) })
		if i < 0 {
			return false
		}
		rest = slices.Delete(rest, i, i+1)
	}
	return true
}

// structure names what a rule can see of a layout: which places hold which kinds.
func (f *finder) structure(groups [][]group) string {
	var b strings.Builder
	for i, at := range groups {
		for _, g := range at {
			fmt.Fprintf(&b, "%d:", i)
			for k, n := range g.series {
				if n > 0 {
					fmt.Fprintf(&b, "%d,", k)
				}
			}
		}
	}
	return b.String()
}

// spare counts the panels left over.
func (f *finder) spare(groups [][]group) int {
	n := 0
	for _, p := range f.leftOver(groups) {
		n += p.Count
	}
	return n
}

func (f *finder) leftOver(groups [][]group) []Panels {
	var left []Panels
	for i, k := range f.kinds {
		n := k.count
		for _, at := range groups {
			for _, g := range at {
				n -= g.series[i] * g.parallel
			}
		}
		if n > 0 {
			left = append(left, Panels{k.name, n})
		}
	}
	return left
}

// cloudEdge is what bright clouds add to the current of a panel (common practice).
const cloudEdge = 1.25

// unlikely counts what no controller could work with: strings whose voltage in the
// mild is above its limit already, or below the bank's; an input with too much
// current, a charger with too much power. These are judged last, and left out
// first; it is the rules that decide.
func (f *finder) unlikely(groups [][]group, wiring []BankWiring) (n int) {
	current, power := map[string]float64{}, map[string]float64{}
	for i, at := range groups {
		p := &f.places[i]
		volts := voltsOf(wiring, p.bank)
		for _, g := range at {
			if f.offVoltage(p, &g, volts) {
				n++
			}
			input := inputKey(p.charger, p.input)
			current[input] += cloudEdge * float64(g.parallel) * f.largest(&g, func(k *kind) float64 { return k.isc })
			power[p.charger] += float64(g.parallel) * f.sum(&g, func(k *kind) float64 { return k.pmax })
		}
	}
	seen := map[string]bool{}
	for i := range f.places {
		p := &f.places[i]
		if input := inputKey(p.charger, p.input); !seen[input] && p.survives > 0 && current[input] > p.survives {
			seen[input] = true
			n++
		}
		if most := p.overpanel * p.rated * voltsOf(wiring, p.bank); !seen[p.charger] && most > 0 && power[p.charger] > most {
			seen[p.charger] = true
			n++
		}
	}
	return n
}

func voltsOf(wiring []BankWiring, bank string) float64 {
	for _, w := range wiring {
		if w.Bank == bank {
			return w.Voltage
		}
	}
	return 0
}

// offVoltage tells a string above the controller's limit or below the bank.
func (f *finder) offVoltage(p *place, g *group, volts float64) bool {
	voc, vmp := f.sum(g, func(k *kind) float64 { return k.voc }), f.sum(g, func(k *kind) float64 { return k.vmp })
	return p.highest > 0 && voc > p.highest || p.tracks && vmp > 0 && vmp < volts
}

// hopeless tells a group that is unlikely however the banks are wired. Where there
// are more layouts than can be thought of, these go first.
func (f *finder) hopeless(p *place, g *group) bool {
	if p.survives > 0 && cloudEdge*float64(g.parallel)*f.largest(g, func(k *kind) float64 { return k.isc }) > p.survives {
		return true
	}
	for _, wiring := range f.wirings {
		volts := voltsOf(wiring, p.bank)
		most := p.overpanel * p.rated * volts
		if !f.offVoltage(p, g, volts) && (most == 0 || float64(g.parallel)*f.sum(g, func(k *kind) float64 { return k.pmax }) <= most) {
			return false
		}
	}
	return true
}

func (f *finder) largest(g *group, of func(*kind) float64) (most float64) {
	for i, n := range g.series {
		if n > 0 {
			most = max(most, of(&f.kinds[i]))
		}
	}
	return most
}

// sum adds a figure over a string; 0 where one of its panels lacks it.
func (f *finder) sum(g *group, of func(*kind) float64) float64 {
	total := 0.0
	for i, n := range g.series {
		if n == 0 {
			continue
		}
		x := of(&f.kinds[i])
		if x == 0 {
			return 0
		}
		total += float64(n) * x
	}
	return total
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
	kinds, least, most := 0, math.Inf(1), 0.0
	for i, n := range p {
		if n == 0 {
			continue
		}
		kinds++
		if a := f.kinds[i].imp; a > 0 {
			least, most = min(least, a), max(most, a)
		}
	}
	return kinds > 1 && (most == 0 || most <= least*(1+currentApart))
}

// enumeration walks over the places and gives each its groups.
type enumeration struct {
	*finder
	patterns [][]int
	left     []int
	groups   [][]group
	found    [][][]group
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
		g := group{series: e.patterns[n]}
		if e.twice(i, &g) {
			continue
		}
		for g.parallel = 1; e.take(&g, 1); g.parallel++ {
			if !e.agrees(i, &g) || e.hopeful && e.hopeless(&e.places[i], &g) {
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

// keep notes a layout unless it is empty or the mirror image of another.
func (e *enumeration) keep() {
	empty := true
	for i, at := range e.groups {
		empty = empty && len(at) == 0
		for j := range i { // of like places the earlier has the larger share
			if e.places[j].class == e.places[i].class && compareGroups(e.groups[j], at) < 0 {
				return
			}
		}
	}
	if empty {
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
