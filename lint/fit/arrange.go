package fit

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
)

// Which arrangements are tried, and in which order.

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

// kinds is how many kinds of panel it holds.
func (g *group) kinds() (n int) {
	for _, c := range g.series {
		if c > 0 {
			n++
		}
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
				parts += 1 + g.kinds()
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
