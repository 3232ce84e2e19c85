package numeric

import (
	"math"

	"stringline/lint/physics"
)

// Axis is a row of Nodes equally spaced values from Min to Max.
type Axis struct {
	Min, Max float64
	Nodes    int // 4 to 1000
}

// At gives node i.
func (a Axis) At(i int) float64 {
	return a.Min + (a.Max-a.Min)*float64(i)/float64(a.Nodes-1)
}

func (a Axis) check(doing string) error {
	if math.IsNaN(a.Min) || math.IsNaN(a.Max) || math.IsInf(a.Min, 0) || math.IsInf(a.Max, 0) || a.Min >= a.Max {
		return physics.Refuse(doing, "an axis from %v to %v", a.Min, a.Max)
	}
	if a.Nodes < 4 || a.Nodes > 1000 {
		return physics.Refuse(doing, "%d nodes on an axis; 4 to 1000", a.Nodes)
	}
	return nil
}

// Grid is a smooth function of two variables on a regular grid. It is not changed
// after [NewGrid]: safe for concurrent use.
type Grid struct {
	x, y       Axis
	perX, perY float64 // nodes per unit
	values     []float64
}

// NewGrid tabulates f over two axes.
func NewGrid(x, y Axis, f func(x, y float64) (float64, error)) (*Grid, error) {
	const doing = "tabulating a function"
	if err := x.check(doing); err != nil {
		return nil, err
	}
	if err := y.check(doing); err != nil {
		return nil, err
	}
	g := &Grid{x: x, y: y, values: make([]float64, 0, x.Nodes*y.Nodes),
		perX: float64(x.Nodes-1) / (x.Max - x.Min), perY: float64(y.Nodes-1) / (y.Max - y.Min)}
	for i := range x.Nodes {
		for j := range y.Nodes {
			v, err := f(x.At(i), y.At(j))
			if err != nil {
				return nil, err
			}
			if math.IsNaN(v) || math.IsInf(v, 0) {
				return nil, physics.Refuse(doing, "no value at (%v, %v)", x.At(i), y.At(j))
			}
			g.values = append(g.values, v)
		}
	}
	return g, nil
}

// At interpolates at (x, y) by the cubic through the four nearest nodes in each
// direction (Lagrange's form, M. Abramowitz & I. A. Stegun, Handbook of
// Mathematical Functions, 25.2.13); the error falls with the fourth power of the
// spacing, and cubics are given exactly. Outside the grid the nearest edge is
// taken.
func (g *Grid) At(x, y float64) float64 {
	i, a := place((min(max(x, g.x.Min), g.x.Max)-g.x.Min)*g.perX, g.x.Nodes-4)
	j, b := place((min(max(y, g.y.Min), g.y.Max)-g.y.Min)*g.perY, g.y.Nodes-4)
	sum := 0.0
	for row, weight := range a {
		at := (i+row)*g.y.Nodes + j
		v := g.values[at : at+4]
		sum += weight * (b[0]*v[0] + b[1]*v[1] + b[2]*v[2] + b[3]*v[3])
	}
	return sum
}

// place gives the first of the four nodes about a position and their weights.
func place(position float64, last int) (first int, weights [4]float64) {
	first = min(max(int(position)-1, 0), last)
	t := position - float64(first)
	t1, t2, t3 := t-1, t-2, t-3
	return first, [4]float64{-t1 * t2 * t3 / 6, t * t2 * t3 / 2, -t * t1 * t3 / 2, t * t1 * t2 / 6}
}

// Bytes gives the memory that the values take.
func (g *Grid) Bytes() int { return 8 * cap(g.values) }
