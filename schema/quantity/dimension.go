package quantity

import (
	"strconv"
	"strings"
)

// add sums two exponents and stops at the ends of int8, so that a formula of a
// hundred factors cannot wrap round into a dimension that it has not.
func add(a, b int8) int8 {
	return int8(max(-127, min(127, int(a)+int(b))))
}

// Times gives the dimension of a product. A temperature multiplied by a bare
// number stays a temperature; in any other product it counts as a difference.
func (d Dimension) Times(e Dimension) Dimension {
	p := Dimension{
		Length: add(d.Length, e.Length), Mass: add(d.Mass, e.Mass), Time: add(d.Time, e.Time),
		Current: add(d.Current, e.Current), Temperature: add(d.Temperature, e.Temperature), Angle: add(d.Angle, e.Angle),
	}
	p.Point = d.Point && e.IsNumber() || e.Point && d.IsNumber()
	return p
}

// Over gives the dimension of a quotient. See Times for temperatures.
func (d Dimension) Over(e Dimension) Dimension {
	q := Dimension{
		Length: add(d.Length, -e.Length), Mass: add(d.Mass, -e.Mass), Time: add(d.Time, -e.Time),
		Current: add(d.Current, -e.Current), Temperature: add(d.Temperature, -e.Temperature), Angle: add(d.Angle, -e.Angle),
	}
	q.Point = d.Point && e.IsNumber()
	return q
}

// Plus gives the dimension of a sum; ok is false where the two cannot be added.
// A temperature takes a difference; two temperatures have no sum.
func (d Dimension) Plus(e Dimension) (sum Dimension, ok bool) {
	a, b := d, e
	a.Point, b.Point = false, false
	if a != b || d.Point && e.Point {
		return Dimension{}, false
	}
	a.Point = d.Point || e.Point
	return a, true
}

// Minus gives the dimension of a difference; ok is false where the second
// cannot be taken from the first. Two temperatures give a difference.
func (d Dimension) Minus(e Dimension) (diff Dimension, ok bool) {
	a, b := d, e
	a.Point, b.Point = false, false
	if a != b || e.Point && !d.Point {
		return Dimension{}, false
	}
	a.Point = d.Point && !e.Point
	return a, true
}

// IsNumber tells whether the dimension is that of a bare number or a percentage.
func (d Dimension) IsNumber() bool { return d == Dimension{} }

// Unit gives the unit in which documents print a value of this dimension: a
// document's unit (an energy in Wh, an area in mm2, a bare number in ""), else
// a unit of the table with scale 1, else the SI unit spelt out ("kg m2 s-3
// K-2"), which Lookup does not know.
func (d Dimension) Unit() Unit {
	if u, ok := byDimension[d]; ok {
		return u
	}
	return Unit{Symbol: d.baseUnits(), Dimension: d, Scale: 1}
}

// String gives the symbol of Unit.
func (d Dimension) String() string { return d.Unit().Symbol }

// baseUnits writes the dimension in SI base units: "kg m2 s-3 A-1".
func (d Dimension) baseUnits() string {
	var parts []string
	for _, base := range []struct {
		symbol   string
		exponent int8
	}{{"kg", d.Mass}, {"m", d.Length}, {"s", d.Time}, {"A", d.Current}, {"K", d.Temperature}, {"rad", d.Angle}} {
		switch base.exponent {
		case 0:
		case 1:
			parts = append(parts, base.symbol)
		default:
			parts = append(parts, base.symbol+strconv.Itoa(int(base.exponent)))
		}
	}
	return strings.Join(parts, " ")
}

// Noun names the dimension for people, with its article: "a voltage", "an
// area"; "a quantity in kg m2 s-1" where it has no name.
func (d Dimension) Noun() string {
	for _, n := range nouns {
		if n.of == d {
			return n.noun
		}
	}
	return "a quantity in " + d.String()
}
