package panel

import (
	"math"
	"slices"

	"stringline/lint/physics"
)

// Module is Count like modules in series, all under the same light and equally
// warm.
//
// Bypass diodes: Diodes of them lie over each module, together over all of its
// cells; under even light they conduct together, so they act as one diode of
// Diodes x DiodeDrop. DiodeDrop 0 is the ideal diode (the default: a drop only
// makes the bypassed module's loss larger by some 0.5 V each). Diodes 0: none,
// the module's reverse branch is its shunt.
type Module struct {
	Curve     Curve
	Count     int     // 1 to 10 000
	Diodes    int     // over one module, 0 to 100
	DiodeDrop float64 // V each, 0 to 2
}

// String is modules in series: one current, their voltages add.
type String struct {
	Modules []Module
	Count   int // like strings in parallel, 1 to 10 000

	// Blocking: a diode lets no current into the string. Its drop, 0 to 2 V, is
	// lost in the string's voltage.
	Blocking     bool
	BlockingDrop float64
}

// Input is the strings of one controller input in parallel: one voltage, their
// currents add. Make it with [NewInput]. Its methods work in memory of its own, so
// it serves one goroutine at a time.
type Input struct {
	curves []Curve
	lines  []line

	// Where a method works: kept so that a year of hours allocates nothing.
	breaks []float64
	state  []state
	found  []Point
}

// element is modules of a line that share a curve and a bypass.
type element struct {
	curve  int
	count  float64
	bypass bool
	floor  float64 // V of all its modules when bypassed, 0 or less
	knee   float64 // A from which on it is bypassed; +Inf without a bypass
	open   float64 // V of all its modules at I = 0
}

// line is a string made ready. Its elements stand in the order in which they are
// bypassed as the current grows; with the first k of them bypassed the voltage
// is a concave, falling function of the current. breaks[k] is the line's voltage
// at which element k is just bypassed.
type line struct {
	elements []element
	breaks   []float64
	count    float64
	blocking bool
	drop     float64
	open     float64 // V at I = 0, without the blocking diode
	number   int     // of the string as given
}

// beyond is a current in A that no string can take: a search that gets there is
// asked for a voltage far past open circuit, and would leave float64.
const beyond = 1e15

// NewInput checks strings and puts them in parallel.
func NewInput(strings []String) (*Input, error) {
	const doing = "strings in parallel"
	if len(strings) == 0 || len(strings) > 10000 {
		return nil, physics.Refuse(doing, "%d strings; 1 to 10000", len(strings))
	}
	in := &Input{}
	for number, s := range strings {
		if len(s.Modules) == 0 || len(s.Modules) > 10000 {
			return nil, physics.Refuse(doing, "%d kinds of module in a string; 1 to 10000", len(s.Modules))
		}
		if err := checkString(doing, s.Count, s.Blocking, s.BlockingDrop); err != nil {
			return nil, err
		}
		l := line{count: float64(s.Count), blocking: s.Blocking, number: number}
		if s.Blocking {
			l.drop = s.BlockingDrop
		}
		for _, m := range s.Modules {
			if err := checkModule(doing, m.Count, m.Diodes, m.DiodeDrop); err != nil {
				return nil, err
			}
			if m.Curve.ideality == 0 {
				return nil, physics.Refuse(doing, "a module without a curve")
			}
			curve := slices.Index(in.curves, m.Curve)
			if curve < 0 {
				curve = len(in.curves)
				in.curves = append(in.curves, m.Curve)
			}
			l.add(newElement(curve, m.Count, m.Diodes, m.DiodeDrop))
		}
		in.lines = append(in.lines, l)
	}
	in.ready()
	return in, nil
}

func checkString(doing string, count int, blocking bool, drop float64) error {
	inputs := []physics.Input{{Name: "like strings in parallel", Value: float64(count), Min: 1, Max: 10000}}
	if blocking {
		inputs = append(inputs, physics.Input{Name: "drop of a blocking diode", Value: drop, Min: 0, Max: 2, Unit: "V"})
	}
	return physics.Check(doing, inputs...)
}

func checkModule(doing string, count, diodes int, drop float64) error {
	return physics.Check(doing,
		physics.Input{Name: "like modules in series", Value: float64(count), Min: 1, Max: 10000},
		physics.Input{Name: "bypass diodes", Value: float64(diodes), Min: 0, Max: 100},
		physics.Input{Name: "drop of a bypass diode", Value: drop, Min: 0, Max: 2, Unit: "V"})
}

func newElement(curve, count, diodes int, drop float64) element {
	return element{curve: curve, count: float64(count), bypass: diodes > 0, floor: -float64(count) * float64(diodes) * drop}
}

// add puts an element into the line, with its like if there is one.
func (l *line) add(e element) {
	for k := range l.elements {
		// Equal drops of one module, not of the sum.
		if have := &l.elements[k]; have.curve == e.curve && have.bypass == e.bypass && have.floor*e.count == e.floor*have.count {
			have.count += e.count
			have.floor += e.floor
			return
		}
	}
	l.elements = append(l.elements, e)
}

// ready works out what follows from the curves: where each element is bypassed.
func (in *Input) ready() {
	for n := range in.lines {
		l := &in.lines[n]
		l.open = 0
		for k := range l.elements {
			e := &l.elements[k]
			c := &in.curves[e.curve]
			e.open = e.count * c.OpenCircuit()
			l.open += e.open
			if e.knee = math.Inf(1); e.bypass {
				e.knee = math.Max(0, c.currentAt(e.floor/e.count).v)
			}
		}
		// A handful of elements, most often in order already: an insertion sort
		// allocates nothing and keeps the order of equals.
		for k := 1; k < len(l.elements); k++ {
			for j := k; j > 0 && l.elements[j].knee < l.elements[j-1].knee; j-- {
				l.elements[j], l.elements[j-1] = l.elements[j-1], l.elements[j]
			}
		}
		l.breaks = l.breaks[:0]
		for k := range l.elements {
			e := &l.elements[k]
			if !e.bypass {
				l.breaks = append(l.breaks, math.Inf(-1))
				continue
			}
			v := in.voltage(l, k+1, e.knee).v
			if k > 0 {
				v = math.Min(v, l.breaks[k-1])
			}
			l.breaks = append(l.breaks, v)
		}
	}
	if cap(in.state) < len(in.lines) {
		in.state = make([]state, len(in.lines))
	}
	in.state = in.state[:len(in.lines)]
}

// voltage gives the line's voltage at a current with its first elements
// bypassed, and its derivatives by current.
func (in *Input) voltage(l *line, bypassed int, i float64) sample {
	var sum sample
	for k := range bypassed {
		sum.v += l.elements[k].floor
	}
	for k := bypassed; k < len(l.elements); k++ {
		e := &l.elements[k]
		one := in.curves[e.curve].at(i)
		sum.v += e.count * one.v
		sum.slope += e.count * one.slope
		sum.bend += e.count * one.bend
	}
	return sum
}

// bypassed counts the line's elements that are bypassed at a voltage.
func (l *line) bypassed(v float64) int {
	k := 0
	for k < len(l.breaks) && v < l.breaks[k] {
		k++
	}
	return k
}

// guess is a current of the order of that at maximum power.
func (in *Input) guess(l *line, bypassed int) float64 {
	i := math.Inf(1)
	for k := bypassed; k < len(l.elements); k++ {
		i = math.Min(i, 0.94*in.curves[l.elements[k].curve].photo)
	}
	return i
}

// current gives the line's current at a voltage with its first elements
// bypassed, and its derivatives by voltage. near is where the search starts.
func (in *Input) current(l *line, bypassed int, v, near float64) sample {
	if bypassed >= len(l.elements) {
		// Every element bypassed: below the sum of the floors any current flows.
		// Voltages asked for are 0 or more, so this is their rounding only.
		return sample{v: l.elements[len(l.elements)-1].knee}
	}
	for k := range bypassed {
		v -= l.elements[k].floor
	}
	if bypassed == len(l.elements)-1 {
		e := &l.elements[bypassed]
		one := in.curves[e.curve].currentAt(v / e.count)
		return sample{v: one.v, slope: one.slope / e.count, bend: one.bend / (e.count * e.count)}
	}
	// The voltage is a concave falling function of the current, so its tangent
	// lies above it and Newton's step lands at or right of the root, then
	// approaches it from there: it converges from any start. Without a shunt the
	// current has an upper end, which a step may only approach.
	most, knee := math.Inf(1), math.Inf(1)
	for k := bypassed; k < len(l.elements); k++ {
		e := &l.elements[k]
		c := &in.curves[e.curve]
		knee = math.Min(knee, e.count*c.ideality)
		if c.shunt == 0 {
			most = math.Min(most, c.total)
		}
	}
	i := near
	if !(i < most) {
		i = most - 0.05*math.Abs(most)
	}
	var at sample
	for range 200 {
		at = sample{}
		for k := bypassed; k < len(l.elements); k++ {
			e := &l.elements[k]
			one := in.curves[e.curve].at(i)
			at.v += e.count * one.v
			at.slope += e.count * one.slope
			at.bend += e.count * one.bend
		}
		left := v - at.v
		step := left / at.slope
		if rest := most - i; !(step < rest) {
			// Newton's step in the logarithm of what rests to the end, of which
			// the voltage is all but linear: it may be 10^100 times off.
			step = rest * -math.Expm1(-step/rest)
		}
		next := i + step
		if next >= most { // closer to the end than float64 tells
			next = math.Nextafter(most, 0)
		}
		if next == i {
			break
		}
		i, step = next, next-i
		if !(i > -beyond) {
			return sample{v: math.Inf(-1), slope: math.Inf(-1), bend: math.Inf(-1)}
		}
		if math.Abs(left) < 1e-6*knee {
			// The curves bend over voltages of their idealities, so after this
			// step about (1e-6)^2 of one is left. The slope follows.
			at.slope += at.bend * step
			break
		}
	}
	return sample{v: i, slope: 1 / at.slope, bend: -at.bend / (at.slope * at.slope * at.slope)}
}

// state is where a line stands in a search: its current at the voltage asked for
// last, 0 before any, and the current's derivatives by voltage there.
type state struct {
	bypassed             int
	blocked              bool
	current, slope, bend float64
	voltage              float64
}

// ahead is where the search for the current at a voltage starts: on the parabola
// through the place before, as long as that is near.
func (s *state) ahead(v float64) float64 {
	d := v - s.voltage
	if first, second := s.slope*d, 0.5*s.bend*d*d; math.Abs(second) < 0.5*math.Abs(first) {
		return s.current + first + second
	}
	return s.current
}

// place sets every line's state for voltages about v.
func (in *Input) place(v float64) {
	for n := range in.lines {
		l := &in.lines[n]
		own := v + l.drop
		s := &in.state[n]
		s.blocked = l.blocking && own >= l.open
		k := l.bypassed(own)
		if k != s.bypassed || s.current == 0 {
			*s = state{blocked: s.blocked, current: in.guess(l, k)}
		}
		s.bypassed = k
	}
}

// sum adds the lines' currents at a voltage in the state they are placed in.
func (in *Input) sum(v float64) sample {
	var total sample
	for n := range in.lines {
		l, s := &in.lines[n], &in.state[n]
		if s.blocked {
			continue
		}
		one := in.current(l, s.bypassed, v+l.drop, s.ahead(v))
		s.current, s.slope, s.bend, s.voltage = one.v, one.slope, one.bend, v
		if !(one.v > -beyond) { // no place to go on from
			*s = state{bypassed: s.bypassed, current: in.guess(l, s.bypassed)}
		}
		total.v += l.count * one.v
		total.slope += l.count * one.slope
		total.bend += l.count * one.bend
	}
	return total
}
