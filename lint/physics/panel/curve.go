package panel

import (
	"math"

	"stringline/lint/physics"
	"stringline/lint/physics/numeric"
)

// Ranges of the five parameters of a curve, wide enough for one cell and for a
// long string of modules. A shunt resistance above the limit counts as none.
const (
	largestCurrent    = 1e4  // A, photocurrent
	largestSaturation = 10   // A
	largestSeries     = 1e4  // ohm
	smallestShunt     = 1e-3 // ohm
	largestShunt      = 1e12 // ohm
	smallestIdeality  = 1e-3 // V
	largestIdeality   = 1e4  // V
	largestVoltage    = 1e5  // V, at which a curve is asked
)

// Point is a place on a current-voltage curve.
type Point struct {
	Voltage float64 // V
	Current float64 // A
}

// Power gives V I in W.
func (p Point) Power() float64 { return p.Voltage * p.Current }

// Five are the parameters of a single-diode curve at one condition:
//
//	I = Photocurrent - Saturation (exp((V + I Series)/Ideality) - 1) - (V + I Series)/Shunt
type Five struct {
	Photocurrent float64 // A, 0 to 10 000
	Saturation   float64 // A, saturation current of the diode, above 0 to 10
	Series       float64 // ohm, 0 to 10 000
	Shunt        float64 // ohm, 0.001 and more; math.Inf(1): no shunt
	Ideality     float64 // V, n Ns k T/q, 0.001 to 10 000
}

// Curve is the exact current-voltage curve of one single-diode model: a cell, or
// like cells in series, all under the same light and equally warm. Voltage and
// current count as generated; both may be negative. The zero Curve is a
// conductor without resistance and gives 0 V at any current: make one with
// [NewCurve] or [Model.At]. Curves are values and equal if their parameters are.
type Curve struct {
	photo, saturation, series, shunt, ideality float64 // shunt is a conductance, S
	// Constants of the solution: what is charged to the diode at I = 0, and the
	// logarithm of saturation/(ideality shunt).
	total, offset float64
	// The logarithm of series saturation/(ideality (1 + series shunt)).
	seriesOffset  float64
	logSaturation float64
}

// NewCurve checks the five parameters and makes their curve.
func NewCurve(five Five) (Curve, error) {
	shunt := five.Shunt
	if shunt > largestShunt { // infinity too
		shunt = largestShunt
	}
	if err := physics.Check("single-diode curve",
		physics.Input{Name: "photocurrent", Value: five.Photocurrent, Min: 0, Max: largestCurrent, Unit: "A"},
		physics.Input{Name: "saturation current", Value: five.Saturation, Min: 1e-300, Max: largestSaturation, Unit: "A"},
		physics.Input{Name: "series resistance", Value: five.Series, Min: 0, Max: largestSeries, Unit: "ohm"},
		physics.Input{Name: "shunt resistance", Value: shunt, Min: smallestShunt, Max: largestShunt, Unit: "ohm"},
		physics.Input{Name: "modified ideality", Value: five.Ideality, Min: smallestIdeality, Max: largestIdeality, Unit: "V"}); err != nil {
		return Curve{}, err
	}
	conductance := 0.0
	if shunt < largestShunt {
		conductance = 1 / shunt
	}
	return newCurve(five.Photocurrent, math.Log(five.Saturation), five.Series, conductance, five.Ideality), nil
}

func newCurve(photo, logSaturation, series, shunt, ideality float64) Curve {
	c := Curve{photo: photo, saturation: math.Exp(logSaturation), series: series, shunt: shunt, ideality: ideality, logSaturation: logSaturation}
	c.total = c.photo + c.saturation
	if shunt > 0 {
		c.offset = logSaturation - math.Log(ideality*shunt)
	}
	if series > 0 {
		c.seriesOffset = logSaturation + math.Log(series/(ideality*(1+shunt*series)))
	}
	return c
}

// Five gives the curve's parameters.
func (c Curve) Five() Five {
	shunt := math.Inf(1)
	if c.shunt > 0 {
		shunt = 1 / c.shunt
	}
	return Five{Photocurrent: c.photo, Saturation: c.saturation, Series: c.series, Shunt: shunt, Ideality: c.ideality}
}

// sample is a voltage at a current and its derivatives by current.
type sample struct{ v, slope, bend float64 }

// at gives voltage, dV/dI and d2V/dI2 at a current. Without a shunt no current
// above photo + saturation can flow: v is -Inf there and slope and bend have no
// meaning.
//
// With J = photo + saturation - I the diode's voltage u obeys J = saturation
// exp(u/a) + G u, so w = (saturation/(a G)) exp(u/a) obeys w + ln w = ln
// (saturation/(a G)) + J/(a G): the Lambert W function (A. Jain & A. Kapoor,
// Exact analytical solutions of the parameters of real solar cells using Lambert
// W-function, Solar Energy Materials & Solar Cells 81 (2004) 269-277). u is
// taken from ln w, not from J/G - a w, which cancels where the shunt is high.
func (c *Curve) at(i float64) sample {
	a := c.ideality
	if c.shunt == 0 {
		if a == 0 {
			return sample{}
		}
		j := c.total - i
		if j <= 0 {
			return sample{v: math.Inf(-1), slope: math.Inf(-1)}
		}
		// ln(J/saturation); log1p keeps a voltage near zero exact.
		u := a * (math.Log(j) - c.logSaturation)
		if r := (c.photo - i) / c.saturation; math.Abs(r) < 1 {
			u = a * math.Log1p(r)
		}
		return sample{v: u - i*c.series, slope: -c.series - a/j, bend: -a / (j * j)}
	}
	w, logW := numeric.LambertExp(c.offset + (c.total-i)/(a*c.shunt))
	conductance := c.shunt * (1 + w)
	return sample{
		v:     a*(logW-c.offset) - i*c.series,
		slope: -c.series - 1/conductance,
		bend:  -w / (a * conductance * conductance * (1 + w)),
	}
}

// currentAt gives current, dI/dV and d2I/dV2 at a voltage, from the same
// reference: with g = 1 + G Rs, w = (Rs saturation/(a g)) exp((V + Rs J0)/(a g))
// e^-w. The current may be -Inf for a voltage far beyond open circuit.
func (c *Curve) currentAt(v float64) sample {
	a := c.ideality
	if c.series == 0 {
		e := math.Exp(c.logSaturation + v/a)
		return sample{v: c.total - e - c.shunt*v, slope: -e/a - c.shunt, bend: -e / (a * a)}
	}
	g := 1 + c.shunt*c.series
	w, _ := numeric.LambertExp(c.seriesOffset + (v+c.series*c.total)/(a*g))
	// The diode carries saturation exp(u/a) = a g w/Rs, so its conductance times
	// Rs is g w.
	s := g * (1 + w) // 1 + Rs (diode conductance + G)
	slope := -(g*w + c.shunt*c.series) / (c.series * s)
	return sample{
		v:     (c.total-c.shunt*v)/g - a/c.series*w,
		slope: slope,
		bend:  -g * w / (c.series * a * s * s * s),
	}
}

// Voltage gives the voltage in V at a current in A. Refuses a current that
// cannot flow: above the photocurrent where there is no shunt.
func (c Curve) Voltage(current float64) (float64, error) {
	if err := physics.Check("voltage of a curve", physics.Input{Name: "current", Value: current, Min: -largestVoltage, Max: largestVoltage, Unit: "A"}); err != nil {
		return 0, err
	}
	v := c.at(current).v
	if math.IsInf(v, 0) || math.IsNaN(v) {
		return 0, physics.Refuse("voltage of a curve", "%.6g A cannot flow: without a shunt %.6g A is the most", current, c.total)
	}
	return v, nil
}

// Current gives the current in A at a voltage in V, negative beyond open
// circuit. Refuses a voltage so far beyond that the current leaves float64.
func (c Curve) Current(voltage float64) (float64, error) {
	const doing = "current of a curve"
	if err := physics.Check(doing, physics.Input{Name: "voltage", Value: voltage, Min: -largestVoltage, Max: largestVoltage, Unit: "V"}); err != nil {
		return 0, err
	}
	if c.ideality == 0 {
		return 0, physics.Refuse(doing, "the curve has no parameters")
	}
	i := c.currentAt(voltage).v
	if math.IsInf(i, 0) || math.IsNaN(i) {
		return 0, physics.Refuse(doing, "%.6g V is too far beyond open circuit", voltage)
	}
	return i, nil
}

// CurrentBracketed is [Curve.Current] by bracketing: a second way that shares no
// formula with the first but the model itself. It searches the diode's voltage u
// at which u - I(u) Rs is the voltage asked for, where I(u) is explicit.
func (c Curve) CurrentBracketed(voltage float64) (float64, error) {
	const doing = "current of a curve by bracketing"
	if err := physics.Check(doing, physics.Input{Name: "voltage", Value: voltage, Min: -largestVoltage, Max: largestVoltage, Unit: "V"}); err != nil {
		return 0, err
	}
	if c.ideality == 0 {
		return 0, physics.Refuse(doing, "the curve has no parameters")
	}
	// u - I(u) Rs rises with u. At u = V the current through Rs is I(V): below
	// zero beyond open circuit, else at most photo - G V, so the root lies
	// between V and V + Rs I(V).
	lo, hi := voltage, voltage+c.series*c.explicit(voltage)
	if hi < lo {
		// Far beyond open circuit I(V) without Rs is astronomical; the diode's
		// voltage still exceeds 0.
		lo, hi = math.Max(hi, math.Min(0, voltage)), lo
	}
	hi += 1e-12 * (1 + math.Abs(hi)) // rounding must not cost the sign change
	lo -= 1e-12 * (1 + math.Abs(lo))
	u, err := numeric.Root(func(u float64) float64 { return u - c.series*c.explicit(u) - voltage }, lo, hi, 0)
	if err != nil {
		return 0, physics.Refuse(doing, "%v", err)
	}
	i := c.explicit(u)
	// Rounding of u is scaled by 1/Rs in the one form of the current, by the
	// diode's conductance in the other: take the smaller.
	if conducts := math.Exp(c.logSaturation+u/c.ideality)/c.ideality + c.shunt; c.series*conducts > 1 {
		i = (u - voltage) / c.series
	}
	if math.IsInf(i, 0) || math.IsNaN(i) {
		return 0, physics.Refuse(doing, "%.6g V is too far beyond open circuit", voltage)
	}
	return i, nil
}

// VoltageBracketed is [Curve.Voltage] by bracketing.
func (c Curve) VoltageBracketed(current float64) (float64, error) {
	const doing = "voltage of a curve by bracketing"
	if err := physics.Check(doing, physics.Input{Name: "current", Value: current, Min: -largestVoltage, Max: largestVoltage, Unit: "A"}); err != nil {
		return 0, err
	}
	if c.ideality == 0 {
		return 0, nil
	}
	// Upwards doubling steps of the ideality find a voltage with too little
	// current, downwards one with enough.
	lo, hi := -c.ideality, c.ideality
	for c.explicit(hi) > current && hi < 1e12 {
		hi *= 2
	}
	for c.explicit(lo) < current && lo > -1e18 {
		lo *= 2
	}
	if c.explicit(lo) < current {
		return 0, physics.Refuse(doing, "%.6g A cannot flow: without a shunt %.6g A is the most", current, c.total)
	}
	u, err := numeric.Root(func(u float64) float64 { return c.explicit(u) - current }, lo, hi, 0)
	if err != nil {
		return 0, physics.Refuse(doing, "%v", err)
	}
	return u - current*c.series, nil
}

// explicit gives the current at a voltage of the diode itself.
func (c *Curve) explicit(u float64) float64 {
	return c.photo - c.saturation*math.Expm1(u/c.ideality) - c.shunt*u
}

// OpenCircuit gives the open-circuit voltage in V, 0 in the dark.
func (c Curve) OpenCircuit() float64 {
	if c.photo == 0 {
		return 0
	}
	return math.Max(0, c.at(0).v)
}

// ShortCircuit gives the short-circuit current in A, 0 in the dark.
func (c Curve) ShortCircuit() float64 {
	if c.photo == 0 || c.ideality == 0 {
		return 0
	}
	return math.Max(0, c.currentAt(0).v)
}

// Maximum gives the point of largest power, (0, 0) in the dark.
//
// The current is a concave function of the voltage, so V I has one maximum
// between short and open circuit. It is searched over the diode's voltage u, of
// which V and I are explicit, by safeguarded Newton steps.
func (c Curve) Maximum() Point {
	open := c.OpenCircuit()
	if open == 0 {
		return Point{}
	}
	a := c.ideality
	// Start at the maximum of a curve without resistances: exp((open - u)/a) = 1 + u/a.
	start := open - a*math.Log1p(open/a)
	start = math.Max(start, open/2)
	var at Point
	_, err := numeric.RootNewton(func(u float64) (float64, float64) {
		e := math.Exp(c.logSaturation + u/a)
		i := c.total - e - c.shunt*u
		di := -e/a - c.shunt
		ddi := -e / (a * a)
		v, dv, ddv := u-c.series*i, 1-c.series*di, -c.series*ddi
		at = Point{Voltage: v, Current: i}
		return dv*i + v*di, ddv*i + 2*dv*di + v*ddi
	}, 0, open, start, 1e-12*open, false)
	if err != nil || at.Voltage < 0 || at.Current < 0 {
		return Point{} // light so faint that nothing is left in float64
	}
	return at
}
