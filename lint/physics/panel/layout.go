package panel

import (
	"slices"

	"stringline/lint/physics"
)

// Condition is the light in a plane and the temperature of the cells in it.
type Condition struct {
	Irradiance float64 // W/m2, 0 to 2000
	Cell       float64 // K, -100 to 150 degC
}

// Standard gives standard test conditions: 1000 W/m2, cells at 25 degC.
func Standard() Condition { return Condition{Irradiance: fullSun, Cell: StandardCell} }

// Panels is Count like panels in series within a string.
type Panels struct {
	Model     Model
	Count     int     // 1 to 10 000
	Diodes    int     // bypass diodes over one panel, as in [Module]
	DiodeDrop float64 // V each, as in [Module]

	// Shade is the share of the light that these panels lose, 0 to 1.
	Shade float64
	// Condition says which of the conditions given to [Layout.At] these panels
	// are under: arrays of different tilt have each their own, and so have
	// panels whose cells run at different temperatures.
	Condition int
}

// StringLayout is panels in series, as in [String], before the conditions are known.
type StringLayout struct {
	Panels       []Panels
	Count        int
	Blocking     bool
	BlockingDrop float64
}

// Layout is the strings of one controller input, checked and ready to be put
// under any conditions. It is not changed after [NewLayout]: safe for concurrent
// use.
type Layout struct {
	places     []place
	lines      []line
	conditions int
}

// place is where a curve comes from: a model under one condition and shade.
type place struct {
	model     Model
	ready     translation
	light     float64
	condition int
}

// NewLayout checks the strings of an input.
func NewLayout(strings []StringLayout) (*Layout, error) {
	const doing = "layout of an input"
	if len(strings) == 0 || len(strings) > 10000 {
		return nil, physics.Refuse(doing, "%d strings; 1 to 10000", len(strings))
	}
	l := &Layout{}
	for number, s := range strings {
		if len(s.Panels) == 0 || len(s.Panels) > 10000 {
			return nil, physics.Refuse(doing, "%d kinds of panel in a string; 1 to 10000", len(s.Panels))
		}
		if err := checkString(doing, s.Count, s.Blocking, s.BlockingDrop); err != nil {
			return nil, err
		}
		made := line{count: float64(s.Count), blocking: s.Blocking, number: number}
		if s.Blocking {
			made.drop = s.BlockingDrop
		}
		for _, p := range s.Panels {
			if err := checkModule(doing, p.Count, p.Diodes, p.DiodeDrop); err != nil {
				return nil, err
			}
			if err := physics.Check(doing,
				physics.Input{Name: "shade", Value: p.Shade, Min: 0, Max: 1},
				physics.Input{Name: "condition", Value: float64(p.Condition), Min: 0, Max: 1000}); err != nil {
				return nil, err
			}
			k := slices.IndexFunc(l.places, func(have place) bool {
				return have.model == p.Model && have.light == 1-p.Shade && have.condition == p.Condition
			})
			if k < 0 {
				ready, err := p.Model.prepare()
				if err != nil {
					return nil, err
				}
				k = len(l.places)
				l.places = append(l.places, place{model: p.Model, ready: ready, light: 1 - p.Shade, condition: p.Condition})
			}
			made.add(newElement(k, p.Count, p.Diodes, p.DiodeDrop))
			l.conditions = max(l.conditions, p.Condition+1)
		}
		l.lines = append(l.lines, made)
	}
	return l, nil
}

// Conditions tells how many conditions [Layout.At] takes.
func (l *Layout) Conditions() int { return l.conditions }

// At gives the input under the given conditions, one for each index that its
// panels name.
func (l *Layout) At(conditions ...Condition) (*Input, error) {
	return l.Follow().At(conditions...)
}

// Follower puts a layout under one condition after another without allocating.
// It is not for concurrent use; make one for each goroutine.
type Follower struct {
	layout *Layout
	input  *Input
}

// Follow makes a Follower.
func (l *Layout) Follow() *Follower {
	in := &Input{curves: make([]Curve, len(l.places)), lines: slices.Clone(l.lines)}
	for n := range in.lines {
		in.lines[n].elements = slices.Clone(l.lines[n].elements)
		in.lines[n].breaks = make([]float64, 0, len(in.lines[n].elements))
	}
	return &Follower{layout: l, input: in}
}

// At puts the input under new conditions; what it gives is valid until the next
// call.
func (f *Follower) At(conditions ...Condition) (*Input, error) {
	l := f.layout
	if len(conditions) != l.conditions {
		return nil, physics.Refuse("conditions of an input", "%d given, %d wanted", len(conditions), l.conditions)
	}
	for _, c := range conditions {
		if err := checkConditions(c.Irradiance, c.Cell); err != nil {
			return nil, err
		}
	}
	for k := range l.places {
		p := &l.places[k]
		c := conditions[p.condition]
		f.input.curves[k] = p.ready.at(p.light*c.Irradiance, c.Cell)
	}
	// The order of elements and the searches' starts depend on what came
	// before; the same conditions must give the same bits whatever that was.
	for n := range f.input.lines {
		copy(f.input.lines[n].elements, l.lines[n].elements)
	}
	clear(f.input.state)
	f.input.ready()
	return f.input, nil
}

// Substring gives the model of one of n equal substrings of the panel's cells,
// for light that is uneven over one panel: its voltages, resistances and ideality
// are the n-th part. Each is then a module of its own with one bypass diode.
func (m Model) Substring(n int) (Model, error) {
	if n < 1 || n > 100 {
		return Model{}, physics.Refuse("model of a substring", "%d substrings; 1 to 100", n)
	}
	parts := float64(n)
	m.Reference.Series /= parts
	m.Reference.Shunt /= parts
	m.Reference.Ideality /= parts
	return m, nil
}
