package sun

import "math"

// Sky is the light of one moment.
type Sky struct {
	Global  float64 // on the horizontal, W/m2
	Beam    float64 // direct, on a plane that faces the sun, W/m2
	Diffuse float64 // from the sky on the horizontal, W/m2
}

// What [ClearSky] takes for granted where nothing is measured.
const (
	// LinkeTurbidity is clean to average air of middle latitudes (common practice: 2
	// clear mountain air, 3 clean, 5 hazy).
	LinkeTurbidity = 3.0
	// ClearSkyTop is the elevation in m above which a clear sky grows no brighter.
	// The model's two lines in elevation are for inhabited heights: from some 4200 m
	// they would give more light on the ground than there is above the air.
	ClearSkyTop = 3000.0
)

const bendNodes = 512

// airMass is [airMass] for a sine of the elevation from 0 to 1, from a table: the
// straight line between nodes is within 0.0002 of it at the horizon and within
// 0.00002 above 3 degrees, as a share.
func (c *Clear) airMass(up float64) float64 {
	x := min(up, 1) * bendNodes
	k := min(int(x), bendNodes-1)
	return 1 / (up + c.bend[k] + (x-float64(k))*(c.bend[k+1]-c.bend[k]))
}

// airMass gives the relative optical air mass at an apparent zenith of 0 to 90
// degrees. Source: F. Kasten & A. T. Young, Applied Optics 28 (1989) 4735-4738.
func airMass(cosZenith, zenith float64) float64 {
	return 1 / (cosZenith + 0.50572*math.Pow(96.07995-zenith, -1.6364))
}

// Clear is a cloudless sky over one place. Make it with [ClearOver].
type Clear struct {
	pressure             float64 // in standard atmospheres
	globalTop, globalOut float64 // Ineichen and Perez's cg1, and their cg2 with the rest of the exponent
	beamTop, beamOut     float64
	bend                 [bendNodes + 1]float64 // what air mass has beyond 1/sin of the elevation, over that sine
	bound                float64                // of the beam's level part as a share of the global
}

// ClearOver gives the cloudless sky at an elevation in m (-500 to 9000, beyond
// [ClearSkyTop] as there) with a Linke turbidity of 1 to 8; [LinkeTurbidity] where
// none is known.
//
// Source: P. Ineichen & R. Perez, A new airmass independent formulation for the
// Linke turbidity coefficient, Solar Energy 73 (2002) 151-157, with its bound of
// the beam, which acts in very clear air (turbidity 2 and less), and without the
// factor exp(0.01 m^1.8) on the global that is also published; from memory, held
// against Haurwitz and, for the beam, Meinel.
func ClearOver(elevation, turbidity float64) Clear {
	e := math.Min(elevation, ClearSkyTop)
	h1, h2 := math.Exp(-e/8000), math.Exp(-e/1250)
	c := Clear{
		pressure:  StandardPressure(e) / 101325,
		globalTop: 5.09e-5*e + 0.868,
		globalOut: (3.92e-5*e + 0.0387) * (h1 + h2*(turbidity-1)),
		beamTop:   0.664 + 0.163/h1,
		beamOut:   0.09 * (turbidity - 1),
		bound:     1 - (0.1-0.2*math.Exp(-turbidity))/(0.1+0.882/h1),
	}
	for k := range c.bend {
		up := float64(k) / bendNodes
		c.bend[k] = 1/airMass(up, math.Acos(up)/degree) - up
	}
	return c
}

// Sky gives the light with the sun at r, none with the sun below the horizon.
// Beam and diffuse make up the global: Beam Up + Diffuse = Global.
func (c *Clear) Sky(r Ray) Sky {
	if r.Up <= 0 {
		return Sky{}
	}
	mass := c.pressure * c.airMass(r.Up)
	above := Extraterrestrial(r.Distance)
	global := c.globalTop * above * r.Up * math.Exp(-c.globalOut*mass)
	beam := math.Min(c.beamTop*above*math.Exp(-c.beamOut*mass), c.bound*global/r.Up)
	return Sky{Global: global, Beam: beam, Diffuse: math.Max(0, global-beam*r.Up)}
}

// ClearSky is [Clear.Sky] for one moment.
func ClearSky(p Position, elevation, turbidity float64) Sky {
	c := ClearOver(elevation, turbidity)
	return c.Sky(p.Ray())
}

// Haurwitz gives the global horizontal irradiance of a clear sky in W/m2: a
// second, rougher way to [ClearSky]. Source: B. Haurwitz, Journal of Meteorology 2
// (1945), with 1098 and 0.059 (0.057 is also published: 1.2 % at 10 degrees).
func Haurwitz(apparentZenith float64) float64 {
	cosZenith := math.Cos(apparentZenith * degree)
	if apparentZenith >= 90 || cosZenith <= 0 {
		return 0
	}
	return 1098 * cosZenith * math.Exp(-0.059/cosZenith)
}
