package sweep

import (
	"cmp"
	"context"
	"maps"
	"math"
	"slices"
	"sync/atomic"

	"stringline/lint"
	"stringline/lint/facts"
	"stringline/lint/verdict"
)

// Where verdicts turn, and which facts move.

// none stands for a subject that a point does not have.
const none = verdict.Outcome("")

func outcome(r *Row, key string) verdict.Outcome {
	o, _ := r.Outcome(key)
	if o == "" {
		return none
	}
	return o
}

// turns finds every change of a verdict along the first axis, for each point of
// the second; and along the second at the first point of the first, for what turns
// with it alone. Points that could not be read are passed over.
func (s *sweeper) turns(ctx context.Context, rows []Row) ([]Turn, error) {
	var all []Turn
	first := len(s.axes[0].Points)
	note := func(key string, axis, from, to, other int) {
		before, after := outcome(&rows[from], key), outcome(&rows[to], key)
		if before == after || len(rows[from].Problems)+len(rows[to].Problems) > 0 {
			return
		}
		v, a := s.samples[key], s.axes[axis]
		all = append(all, Turn{Rule: v.rule, About: v.about, Which: v.which, Title: v.title, Grade: v.grade, Limited: v.limited, Axis: axis, Other: other, Before: before, After: after,
			Low: a.Points[rows[from].At[axis]], High: a.Points[rows[to].At[axis]]})
	}
	for _, key := range slices.Sorted(maps.Keys(s.samples)) {
		before := len(all)
		for n := range rows {
			if rows[n].At[0] == 0 {
				continue
			}
			other := -1
			if len(s.axes) == 2 {
				other = n / first
			}
			note(key, 0, n-1, n, other)
		}
		if len(all) > before || len(s.axes) == 1 {
			continue
		}
		for n := first; n < len(rows); n += first {
			note(key, 1, n-first, n, 0)
		}
	}
	var done atomic.Int64
	err := s.parallel(ctx, len(all), func(i int) error {
		err := s.bisect(ctx, &all[i])
		if n := int(done.Add(1)); err == nil && s.options.Progress != nil {
			s.options.Progress(len(rows)+n, len(rows)+len(all))
		}
		return err
	})
	if err != nil {
		return nil, err
	}
	sortTurns(all)
	return all, nil
}

func sortTurns(all []Turn) {
	slices.SortStableFunc(all, func(a, b Turn) int {
		return cmp.Or(cmp.Compare(a.Grade.Rank(), b.Grade.Rank()), cmp.Compare(a.Rule, b.Rule), cmp.Compare(a.About, b.About), cmp.Compare(a.Which, b.Which),
			cmp.Compare(a.Axis, b.Axis), cmp.Compare(a.Other, b.Other), cmp.Compare(a.Low.Value, b.Low.Value))
	})
}

// bisect narrows a turn down to the axis' tolerance. Where a third outcome lies
// between the two, it is where the first one ends.
func (s *sweeper) bisect(ctx context.Context, t *Turn) error {
	a := s.axes[t.Axis]
	if !a.Between {
		return nil
	}
	at := make([]Point, len(s.axes))
	if t.Other >= 0 {
		at[1-t.Axis] = s.axes[1-t.Axis].Points[t.Other]
	}
	key := t.Key()
	for math.Abs(t.High.Value-t.Low.Value) > a.Tolerance {
		middle := (t.Low.Value + t.High.Value) / 2
		if middle == t.Low.Value || middle == t.High.Value {
			return nil
		}
		p := Point{Text: a.text(middle), Value: middle}
		at[t.Axis] = p
		found, err := s.outcomeAt(ctx, at, key)
		if err != nil {
			return err
		}
		if found == t.Before {
			t.Low = p
		} else {
			t.High, t.After = p, found
		}
	}
	return nil
}

// outcomeAt judges between points. What was tried once is remembered for every
// rule; a year is computed only where the rule needs one.
func (s *sweeper) outcomeAt(ctx context.Context, at []Point, key string) (verdict.Outcome, error) {
	name := ""
	for _, p := range at {
		name += p.Text + "\x00"
	}
	for _, withoutYear := range []bool{true, false} {
		from := name
		if !withoutYear {
			from += "year"
		}
		s.mutex.Lock()
		found, known := s.tried[from]
		s.mutex.Unlock()
		if !known {
			d, err := s.trial(ctx, at, withoutYear)
			if err != nil {
				return "", err
			}
			found = make([]verdict.Outcome, len(s.place))
			for i := range d.Verdicts {
				v := &d.Verdicts[i]
				at, sampled := s.place[v.Key()]
				switch {
				case !sampled: // no point has it, so nothing turns on it
				case withoutYear && lint.Awaits(v) && !s.options.WithoutYear:
					found[at] = awaiting
				default:
					found[at] = v.Outcome
				}
			}
			s.mutex.Lock()
			s.tried[from] = found
			s.mutex.Unlock()
		}
		if o := found[s.place[key]]; o != awaiting {
			return o, nil
		}
	}
	return none, nil
}

const awaiting = verdict.Outcome("awaiting a year")

// columns settles which facts are told: those asked for, else those that a rule
// limits and that move, or whose limit does; first those of rules that turn, then by how close they come to their
// limits.
func (s *sweeper) columns(rows []Row, turns []Turn) []Column {
	column := func(id string) Column {
		c := Column{ID: id, LimitMoves: limitMoves(rows, id)}
		for i := range rows {
			if f, ok := rows[i].Values[id]; ok {
				c.Unit = f.Unit
			}
		}
		if w, ok := s.base.System.Work(id); ok {
			c.Means = w.Entry.Means
		}
		return c
	}
	var all []Column
	if s.options.Facts != nil {
		for _, id := range s.options.Facts {
			all = append(all, column(id))
		}
		return all
	}
	type mover struct {
		id    string
		turns bool
		least float64
	}
	var movers []mover
	turning := map[string]bool{}
	for i := range turns {
		turning[turns[i].Key()] = true
	}
	at := map[string]int{}
	for _, key := range slices.Sorted(maps.Keys(s.samples)) {
		v := s.samples[key]
		if v.limited == "" || !moves(rows, v.limited) && !limitMoves(rows, v.limited) {
			continue
		}
		n, told := at[v.limited]
		if !told {
			n = len(movers)
			at[v.limited] = n
			movers = append(movers, mover{id: v.limited, least: math.Inf(1)})
		}
		movers[n].turns = movers[n].turns || turning[key]
		for i := range rows {
			if here := rows[i].judged[key]; here != nil && here.headroom != nil {
				movers[n].least = min(movers[n].least, *here.headroom)
			}
		}
	}
	slices.SortStableFunc(movers, func(a, b mover) int {
		if a.turns != b.turns {
			if a.turns {
				return -1
			}
			return 1
		}
		return cmp.Or(cmp.Compare(a.least, b.least), cmp.Compare(a.id, b.id))
	})
	for _, m := range movers {
		all = append(all, column(m.id))
	}
	return all
}

// limitMoves tells a fact whose limit is not the same at every point.
func limitMoves(rows []Row, id string) bool {
	var first *float64
	for i := range rows {
		limit, ok := rows[i].Limits[id]
		switch {
		case !ok:
		case first == nil:
			first = &limit
		case apart(limit, *first):
			return true
		}
	}
	return false
}

// apart tells two numbers that differ by more than their last digits.
func apart(a, b float64) bool { return math.Abs(a-b) > 1e-9*math.Max(math.Abs(a), math.Abs(b)) }

// moves tells a fact that is not the same at every point.
func moves(rows []Row, id string) bool {
	var first *facts.Fact
	for i := range rows {
		f, ok := rows[i].Values[id]
		if !ok || len(rows[i].Problems) > 0 {
			continue
		}
		if first == nil {
			first = &f
			continue
		}
		if f.Known != first.Known || apart(f.SI, first.SI) {
			return true
		}
	}
	return false
}
