package judge

import (
	"fmt"
	"math"
	"sort"
	"strings"

	"stringline/schema/quantity"
)

// lookup finds the row for the given axis values. Axes that match exactly come
// first, then the others in their order, each among the rows that are left.
func (t *table) lookup(at []cell) (cell, error) {
	left := t.all()
	for _, exact := range []bool{true, false} {
		for i := range t.axes {
			if (t.axes[i].match == "exact") != exact {
				continue
			}
			next, err := t.narrow(left, i, at[i])
			if err != nil {
				return cell{}, err
			}
			left = next
		}
	}
	return t.only(left, at)
}

// all gives the rows to narrow down: places of rows, since rows are large.
func (t *table) all() []*row {
	rows := make([]*row, len(t.rows))
	for i := range t.rows {
		rows[i] = &t.rows[i]
	}
	return rows
}

func (t *table) only(left []*row, at []cell) (cell, error) {
	if left[0].none {
		return cell{}, fmt.Errorf("table %q gives no value for %s", t.name, t.describe(at))
	}
	return left[0].value, nil
}

// narrow keeps the rows that fit on one axis, in place.
func (t *table) narrow(rows []*row, i int, want cell) ([]*row, error) {
	a := &t.axes[i]
	best, found := 0.0, false
	if a.kind == number {
		for _, r := range rows {
			v := r.at[i].si
			switch {
			case near(v, want.si):
				best, found = v, true
			case a.match == "up_to" && v > want.si && (!found || v < best && !near(best, want.si)),
				a.match == "down_to" && v < want.si && (!found || v > best && !near(best, want.si)):
				best, found = v, true
			}
		}
		if !found {
			return nil, t.outside(rows, i, want)
		}
	}
	kept := rows[:0]
	for _, r := range rows {
		c := r.at[i]
		if a.kind == number && c.si == best || a.kind == word && c.word == want.word || a.kind == yesNo && c.yes == want.yes {
			kept = append(kept, r)
		}
	}
	if len(kept) == 0 { // then nothing was written over
		return nil, t.outside(rows, i, want)
	}
	return kept, nil
}

// outside says that a value lies beyond the table.
func (t *table) outside(rows []*row, i int, want cell) error {
	a := &t.axes[i]
	if a.kind != number {
		return fmt.Errorf("table %q has no row for %s %s", t.name, a.name, a.show(want))
	}
	low, high := math.Inf(1), math.Inf(-1)
	for _, r := range rows {
		low, high = min(low, r.at[i].si), max(high, r.at[i].si)
	}
	return fmt.Errorf("table %q has no row for %s %s: it goes from %s to %s",
		t.name, a.name, a.show(want), a.show(cell{si: low}), a.show(cell{si: high}))
}

func (a *axis) show(c cell) string {
	switch a.kind {
	case word:
		return fmt.Sprintf("%q", c.word)
	case yesNo:
		return map[bool]string{true: "yes", false: "no"}[c.yes]
	}
	return quantity.Format(c.si, a.unit.Symbol)
}

func (t *table) describe(at []cell) string {
	parts := make([]string, len(at))
	for i := range at {
		parts[i] = t.axes[i].name + " " + t.axes[i].show(at[i])
	}
	return strings.Join(parts, ", ")
}

// interpolate is linear between rows on every axis of numbers that does not
// match exactly, one axis after the other.
func (t *table) interpolate(at []cell) (float64, error) {
	left := t.all()
	var free []int
	for i := range t.axes {
		if t.axes[i].match != "exact" {
			free = append(free, i)
			continue
		}
		next, err := t.narrow(left, i, at[i])
		if err != nil {
			return 0, err
		}
		left = next
	}
	return t.between(left, free, at)
}

func (t *table) between(rows []*row, free []int, at []cell) (float64, error) {
	if len(free) == 0 {
		c, err := t.only(rows, at)
		return c.si, err
	}
	i, want := free[0], at[free[0]].si
	groups := map[float64][]*row{}
	var keys []float64
	for _, r := range rows {
		v := r.at[i].si
		if _, ok := groups[v]; !ok {
			keys = append(keys, v)
		}
		groups[v] = append(groups[v], r)
	}
	sort.Float64s(keys)
	for _, k := range keys {
		if near(k, want) {
			return t.between(groups[k], free[1:], at)
		}
	}
	n := sort.SearchFloat64s(keys, want)
	if n == 0 || n == len(keys) {
		return 0, t.outside(rows, i, at[i])
	}
	low, err := t.between(groups[keys[n-1]], free[1:], at)
	if err != nil {
		return 0, err
	}
	high, err := t.between(groups[keys[n]], free[1:], at)
	if err != nil {
		return 0, err
	}
	return low + (high-low)*(want-keys[n-1])/(keys[n]-keys[n-1]), nil
}
