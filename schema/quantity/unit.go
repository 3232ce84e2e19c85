// Package quantity turns "37.4 V" into a typed SI value and back. It holds the
// one table of units. Nothing in it knows a design.
//
// Use [Parse] for text that a person wrote, [ParseAs] where the unit that is
// due is known, [Unit.FromSI] and [Format] for showing a value, [Round] for
// numbers that a machine reads, and [Dimension] for unit algebra.
//
// No function here panics, whatever its input, but [MustLookup], which is for
// tables in the program's own text.
package quantity

// Dimension holds the exponents of a quantity's base dimensions. It is
// comparable; the zero Dimension is that of a bare number (and of a
// percentage). Angle has a place of its own so that a torque (N m, energy per
// angle) is no energy. Point marks a temperature on a scale with a zero, as
// against a temperature difference.
type Dimension struct {
	Length, Mass, Time, Current, Temperature, Angle int8
	Point                                           bool
}

// Unit is one unit of the table. A value v in this unit is v*Scale + Offset in
// SI; Offset is not zero for degC and degF alone. AWG is a gauge, not a scale:
// its Scale is 0 and ToSI and FromSI follow the formula of ASTM B258.
type Unit struct {
	Symbol        string // as documents and reports print it: "mm2", "degC", "%/K"
	Dimension     Dimension
	Scale, Offset float64
}

// ToSI gives the SI value of v in this unit.
func (u Unit) ToSI(v float64) float64 {
	if u.Symbol == gaugeSymbol {
		return gaugeArea(v)
	}
	return v*u.Scale + u.Offset
}

// FromSI gives the value in this unit of an SI value. In AWG the result is the
// gauge number, 0 for 1/0 down to -3 for 4/0, and NaN for an area that is not
// positive.
func (u Unit) FromSI(si float64) float64 {
	if u.Symbol == gaugeSymbol {
		return gaugeNumber(si)
	}
	return (si - u.Offset) / u.Scale
}
