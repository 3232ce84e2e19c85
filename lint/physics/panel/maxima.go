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
	if err := in.search(false); err != nil || len(in.found) == 0 {
		return nil, err
	}
	slices.Reverse(in.found)
	return slices.Clone(in.found), nil
}

// Maximum gives the largest of the maxima, (0, 0) in the dark.
func (in *Input) Maximum() (Point, error) {
	var best Point
	if err := in.search(true); err != nil {
		return best, err
	}
	for _, p := range in.found {
		if p.Power() > best.Power() {
			best = p
		}
	}
	return best, nil
}

// search fills in.found from the highest voltage down. For the largest alone it
// leaves out intervals that cannot beat what is found.
func (in *Input) search(largest bool) error {
	in.found = in.found[:0]
	// The search may run up to the strongest string's open circuit: beyond the
	// input's own the power falls on below zero, and no exact end is needed.
	open := 0.0
	for n := range in.lines {
		open = math.Max(open, in.lines[n].open-in.lines[n].drop)
	}
	if open <= 0 {
		return nil
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
	best := 0.0
	for k := len(in.breaks) - 1; k > 0; k-- {
		atLeast := 0.0
		if largest {
			atLeast = best
		}
		p, ok, err := in.between(in.breaks[k-1], in.breaks[k], atLeast)
		if err != nil {
			return err
		}
		if ok {
			in.found = append(in.found, p)
			best = math.Max(best, p.Power())
		}
	}
	return nil
}

// between finds the maximum inside an interval in which no diode turns, if it may
// be more than atLeast.
func (in *Input) between(lo, hi, atLeast float64) (Point, bool, error) {
	in.place(lo + 0.5*(hi-lo))
	var at Point
	slope := func(v float64) (float64, float64) {
		one := in.sum(v)
		at = Point{Voltage: v, Current: one.v}
		return one.v + v*one.slope, 2*one.slope + v*one.bend
	}
	// At 0 V the power rises, at open circuit it falls: only inner ends are asked.
	if lo > 0 || atLeast > 0 {
		in.corner(lo)
		rise, _ := slope(lo)
		if lo > 0 && rise <= 0 || hi*at.Current < atLeast {
			return Point{}, false, nil // the current only falls with voltage
		}
	}
	start := in.start()
	if hi < in.breaks[len(in.breaks)-1] {
		in.anew()
		rise, bend := slope(hi)
		if rise >= 0 {
			return Point{}, false, nil
		}
		if !(start < hi) {
			start = hi - rise/bend
		}
	} else {
		in.anew()
	}
	if !(start > lo && start < hi) {
		start = lo + 0.8*(hi-lo)
	}
	if p, ok, err := in.along(lo, hi); ok || err != nil {
		return p, p.Current > 0, err
	}
	// The power is flat at its maximum: a last step of 1e-8 of the voltage is
	// 1e-16 of the power, and the place before it serves.
	if _, err := numeric.RootNewton(slope, lo, hi, start, 1e-8*hi, false); err != nil {
		return Point{}, false, err
	}
	if at.Current < 0 {
		return Point{}, false, nil
	}
	return at, true, nil
}

// along is between's search where just one line has unlike elements at work. Over
// that line's current its voltage is explicit, and the other lines' currents at a
// voltage are closed forms, so that nothing is searched within the search. It
// tells false where it does not serve.
func (in *Input) along(lo, hi float64) (Point, bool, error) {
	lead := -1
	for n := range in.lines {
		if s := &in.state[n]; !s.blocked && s.bypassed < len(in.lines[n].elements)-1 {
			if lead >= 0 {
				return Point{}, false, nil
			}
			lead = n
		}
	}
	if lead < 0 {
		return Point{}, false, nil
	}
	l, k := &in.lines[lead], in.state[lead].bypassed
	var at Point
	var off float64 // V from the maximum, by the last step
	slope := func(i float64) (float64, float64) {
		own := in.voltage(l, k, i)
		v := own.v - l.drop
		if math.IsInf(v, -1) { // more than flows without a shunt
			off = math.Inf(1)
			return math.Inf(1), math.Inf(1)
		}
		first := 1 / own.slope
		total := sample{v: l.count * i, slope: l.count * first, bend: -l.count * own.bend * first * first * first}
		for n := range in.lines {
			if s := &in.state[n]; n != lead && !s.blocked {
				other := &in.lines[n]
				one := in.current(other, s.bypassed, v+other.drop, 0)
				total.v += other.count * one.v
				total.slope += other.count * one.slope
				total.bend += other.count * one.bend
			}
		}
		at = Point{Voltage: v, Current: total.v}
		rise, bend := total.v+v*total.slope, 2*total.slope+v*total.bend
		off = rise / bend
		return rise, bend * own.slope
	}
	// Between voltages lo and hi the line's current lies between the knees of its
	// weakest element at work and of the strongest bypassed. between has seen the
	// power rise at lo and fall at hi, so it does at the knees, beyond them. With
	// none bypassed the current may fall below zero before hi: then it is looked
	// whether the maximum comes before that.
	least, most := 0.0, l.elements[k].knee
	if math.IsInf(most, 1) {
		return Point{}, false, nil
	}
	if k > 0 {
		least = l.elements[k-1].knee
	} else if l.open-l.drop < hi {
		if rise, _ := slope(least); rise >= 0 {
			return Point{}, false, nil
		}
	}
	_, err := numeric.RootNewton(slope, least, most, math.Max(in.guess(l, k), least), 1e-8*most, true)
	// Where the current is all but flat its last digits decide the voltage: such a
	// maximum is better searched over the voltage.
	return at, err == nil && math.Abs(off) <= 1e-7*hi && at.Voltage > lo*(1-1e-9) && at.Voltage < hi*(1+1e-9), err
}

// anew forgets where the lines' searches stand.
func (in *Input) anew() {
	for n := range in.lines {
		s := &in.state[n]
		*s = state{bypassed: s.bypassed, blocked: s.blocked, current: in.guess(&in.lines[n], s.bypassed)}
	}
}

// corner starts the lines' searches at the lower end of an interval: a line of
// which an element is just bypassed there carries that element's knee.
func (in *Input) corner(v float64) {
	in.anew()
	for n := range in.lines {
		l, s := &in.lines[n], &in.state[n]
		if k := s.bypassed; k < len(l.elements) && l.breaks[k] >= v+l.drop-1e-9*l.open {
			s.current = l.elements[k].knee
		}
	}
}

// start guesses the voltage of the maximum with the lines as placed, NaN where none
// gives anything: the lines' own guesses, weighted by their currents. A line's is the sum of its elements': at
// the maximum of a curve without resistances exp((open - u)/a) = 1 + u/a.
func (in *Input) start() float64 {
	sum, weight := 0.0, 0.0
	for n := range in.lines {
		l := &in.lines[n]
		k := in.state[n].bypassed
		if k == len(l.elements) || in.state[n].blocked {
			continue
		}
		i := in.guess(l, k) * l.count
		v := -l.drop
		for j := range l.elements {
			e := &l.elements[j]
			if j < k {
				v += e.floor
				continue
			}
			c := &in.curves[e.curve]
			v += e.open - e.count*(c.ideality*math.Log1p(e.open/(e.count*c.ideality))+0.94*c.photo*c.series)
		}
		sum += i * v
		weight += i
	}
	return sum / weight
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
