package panel

import (
	"math"
	"slices"

	"stringline/lint/physics"
	"stringline/lint/physics/numeric"
)

// Current gives the input's current in A at a voltage in V, 0 to 100 000: what
// its strings give together. Beyond open circuit it is negative.
func (in *Input) Current(voltage float64) (float64, error) {
	const doing = "current of strings in parallel"
	if err := physics.Check(doing, physics.Input{Name: "voltage", Value: voltage, Min: 0, Max: largestVoltage, Unit: "V"}); err != nil {
		return 0, err
	}
	in.place(voltage)
	i := in.sum(voltage).v
	if math.IsNaN(i) || math.IsInf(i, 0) {
		return 0, physics.Refuse(doing, "%.6g V is too far beyond open circuit", voltage)
	}
	return i, nil
}

// ShortCircuit gives the input's short-circuit current in A.
func (in *Input) ShortCircuit() float64 {
	in.place(0)
	return math.Max(0, in.sum(0).v)
}

// OpenCircuit gives the input's open-circuit voltage in V: where its strings
// give nothing together, the stronger feeding the weaker. 0 in the dark.
func (in *Input) OpenCircuit() (float64, error) {
	lo, hi := math.Inf(1), 0.0
	for n := range in.lines {
		own := in.lines[n].open - in.lines[n].drop
		if in.lines[n].blocking { // it only gives, and only below its own
			hi = math.Max(hi, own)
			continue
		}
		lo, hi = math.Min(lo, own), math.Max(hi, own)
	}
	if hi <= 0 {
		return 0, nil
	}
	if lo == hi || math.IsInf(lo, 1) { // like strings, or blocking ones alone
		return hi, nil
	}
	return numeric.RootNewton(func(v float64) (float64, float64) {
		in.place(v)
		one := in.sum(v)
		return one.v, one.slope
	}, math.Max(0, math.Min(lo, hi)), hi, hi, 0, false)
}

// ReverseCurrent gives the largest current in A that the others drive into any
// one string while the input is open: 0 where all are alike or blocked.
func (in *Input) ReverseCurrent() (float64, error) {
	open, err := in.OpenCircuit()
	if err != nil {
		return 0, err
	}
	in.place(open)
	most := 0.0
	for n := range in.lines {
		l, s := &in.lines[n], &in.state[n]
		if s.blocked {
			continue
		}
		most = math.Max(most, -in.current(l, s.bypassed, open+l.drop, s.current).v)
	}
	// Of like strings rounding leaves a current, far below any that matters.
	if most < 1e-9*in.ShortCircuit() {
		return 0, nil
	}
	return most, nil
}

// Maxima gives every local maximum of the input's power, by rising voltage; none
// in the dark.
//
// Between two voltages at which a bypass or blocking diode turns, every string's
// current is a concave falling function of the voltage, so the sum is too, and
// V I has at most one maximum there. Where a diode turns, the current's slope
// jumps towards zero: such a corner is never a maximum.
func (in *Input) Maxima() ([]Point, error) {
	// The search may run up to the strongest string's open circuit: beyond the
	// input's own the power falls on below zero, and no exact end is needed.
	open := 0.0
	for n := range in.lines {
		open = math.Max(open, in.lines[n].open-in.lines[n].drop)
	}
	if open <= 0 {
		return nil, nil
	}
	in.breaks = append(in.breaks[:0], 0, open)
	for n := range in.lines {
		l := &in.lines[n]
		for _, v := range l.breaks {
			if v -= l.drop; v > 1e-9*open && v < open*(1-1e-12) {
				in.breaks = append(in.breaks, v)
			}
		}
		if v := l.open - l.drop; l.blocking && v > 1e-9*open && v < open*(1-1e-12) {
			in.breaks = append(in.breaks, v)
		}
	}
	slices.Sort(in.breaks)
	in.breaks = slices.Compact(in.breaks)
	in.found = in.found[:0]
	for k := 1; k < len(in.breaks); k++ {
		if p, ok, err := in.between(in.breaks[k-1], in.breaks[k]); err != nil {
			return nil, err
		} else if ok {
			in.found = append(in.found, p)
		}
	}
	return slices.Clone(in.found), nil
}

// between finds the maximum inside an interval in which no diode turns.
func (in *Input) between(lo, hi float64) (Point, bool, error) {
	in.place(lo + 0.5*(hi-lo))
	var at Point
	slope := func(v float64) (float64, float64) {
		one := in.sum(v)
		at = Point{Voltage: v, Current: one.v}
		return one.v + v*one.slope, 2*one.slope + v*one.bend
	}
	// At 0 V the power rises, at open circuit it falls: only inner ends are asked.
	if lo > 0 {
		if rise, _ := slope(lo); rise <= 0 {
			return Point{}, false, nil
		}
	}
	if hi < in.breaks[len(in.breaks)-1] {
		if rise, _ := slope(hi); rise >= 0 {
			return Point{}, false, nil
		}
	}
	start := lo + 0.8*(hi-lo)
	v, err := numeric.RootNewton(slope, lo, hi, start, 1e-10*hi, false)
	if err != nil {
		return Point{}, false, err
	}
	slope(v)
	if at.Current < 0 {
		return Point{}, false, nil
	}
	return at, true, nil
}

// Maximum gives the largest of the maxima, (0, 0) in the dark.
func (in *Input) Maximum() (Point, error) {
	all, err := in.Maxima()
	if err != nil {
		return Point{}, err
	}
	var best Point
	for _, p := range all {
		if p.Power() > best.Power() {
			best = p
		}
	}
	return best, nil
}

// OwnMaxima gives the sum in W of what every module would give at its own
// maximum: what unlike modules tied together lose is measured against it.
func (in *Input) OwnMaxima() float64 {
	total := 0.0
	for n := range in.lines {
		l := &in.lines[n]
		for k := range l.elements {
			e := &l.elements[k]
			total += l.count * e.count * in.curves[e.curve].Maximum().Power()
		}
	}
	return total
}

// Mismatch gives the share of the modules' own maxima that is lost by tying them
// together, 0 to 1; 0 in the dark.
func (in *Input) Mismatch() (float64, error) {
	own := in.OwnMaxima()
	if own <= 0 {
		return 0, nil
	}
	best, err := in.Maximum()
	if err != nil {
		return 0, err
	}
	lost := 1 - best.Power()/own
	if lost < 1e-9 { // of like modules rounding leaves a share, far below any that matters
		return 0, nil
	}
	return lost, nil
}
