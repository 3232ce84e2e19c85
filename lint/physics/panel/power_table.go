package panel

import (
	"math"

	"stringline/lint/physics"
	"stringline/lint/physics/numeric"
)

// faintest is the irradiance in W/m2 below which a table takes the power to be in
// proportion to the light: below it an input gives less than a thousandth of its
// rated power, and the proportion over-states even that a little.
const faintest = 1.0

// Nodes of a table. The power over the light is all but linear in the logarithm
// of the light, bent by the series resistance, and all but linear in temperature.
const (
	lightNodes       = 20
	temperatureNodes = 8
)

// Span is what a table covers: 0 to Brightest W/m2 (2 to 2000), and Coldest to
// Hottest K, of whichever temperature its conditions are given by.
type Span struct {
	Brightest        float64
	Coldest, Hottest float64
}

// PowerTable gives an input's maximum power for many hours at a price far below a
// search: some 1.3 kB that hold 160 searches, then one interpolation an hour. It
// is not changed once made: safe for concurrent use.
type PowerTable struct {
	grid *numeric.Grid
	span Span
	// deviation is as found by Tabulate.
	deviation float64
}

// Tabulate makes the table of a layout's maximum power over one irradiance and
// one temperature. conditions turns these into the layout's conditions, in
// place: for panels of one tilt each cell temperature is the air's plus its own
// rise with the light; then the temperature tabulated is the air's. Arrays of
// different tilt have no one irradiance: use [Layout.Follow] for them.
//
// Method: cubic interpolation of power over irradiance, in the logarithm of the
// irradiance. The deviation from the search is measured at points between the
// nodes and told by [PowerTable.Deviation].
func (l *Layout) Tabulate(span Span, conditions func(irradiance, temperature float64, to []Condition)) (*PowerTable, error) {
	const doing = "tabulating the power of an input"
	if err := physics.Check(doing,
		physics.Input{Name: "brightest", Value: span.Brightest, Min: 2 * faintest, Max: brightest, Unit: "W/m2"},
		physics.Input{Name: "coldest", Value: span.Coldest, Min: coldestCell, Max: hottestCell, Unit: "K"},
		physics.Input{Name: "hottest", Value: span.Hottest, Min: coldestCell, Max: hottestCell, Unit: "K"}); err != nil {
		return nil, err
	}
	if !(span.Coldest < span.Hottest) {
		return nil, physics.Refuse(doing, "the hottest, %.6g K, is not above the coldest", span.Hottest)
	}
	follower, to := l.Follow(), make([]Condition, l.conditions)
	exact := func(irradiance, temperature float64) (float64, error) {
		conditions(irradiance, temperature, to)
		in, err := follower.At(to...)
		if err != nil {
			return 0, err
		}
		best, err := in.Maximum()
		return best.Power(), err
	}
	light := numeric.Axis{Min: math.Log(faintest), Max: math.Log(span.Brightest), Nodes: lightNodes}
	temperature := numeric.Axis{Min: span.Coldest, Max: span.Hottest, Nodes: temperatureNodes}
	grid, err := numeric.NewGrid(light, temperature, func(x, y float64) (float64, error) {
		power, err := exact(math.Exp(x), y)
		return power / math.Exp(x), err
	})
	if err != nil {
		return nil, err
	}
	t := &PowerTable{grid: grid, span: span}
	rated := grid.At(light.Max, span.Coldest) * span.Brightest
	for i := 1; i < lightNodes; i += 2 {
		for _, j := range []int{0, temperatureNodes - 2} {
			irradiance := math.Exp(0.5 * (light.At(i-1) + light.At(i)))
			degrees := 0.5 * (temperature.At(j) + temperature.At(j+1))
			power, err := exact(irradiance, degrees)
			if err != nil {
				return nil, err
			}
			table, err := t.Power(irradiance, degrees)
			if err != nil {
				return nil, err
			}
			rated = math.Max(rated, power)
			t.deviation = math.Max(t.deviation, math.Abs(table-power))
		}
	}
	if rated > 0 {
		t.deviation /= rated
	}
	return t, nil
}

// Power gives the maximum power in W at an irradiance in W/m2 and a temperature
// in K, which the table's span must hold.
func (t *PowerTable) Power(irradiance, temperature float64) (float64, error) {
	if !(irradiance >= 0 && irradiance <= t.span.Brightest && temperature >= t.span.Coldest && temperature <= t.span.Hottest) {
		return 0, physics.Refuse("power from a table", "%.6g W/m2 at %.6g K is outside 0 to %.6g W/m2, %.6g to %.6g K",
			irradiance, temperature, t.span.Brightest, t.span.Coldest, t.span.Hottest)
	}
	return math.Max(0, irradiance*t.grid.At(math.Log(math.Max(irradiance, faintest)), temperature)), nil
}

// Deviation gives the largest distance from the search that was found at points
// between the nodes, as a share of the largest power in the table.
func (t *PowerTable) Deviation() float64 { return t.deviation }

// Bytes gives the memory that the table takes.
func (t *PowerTable) Bytes() int { return t.grid.Bytes() }
