package sun

import "math"

// Sky is the light of one moment.
type Sky struct {
	Global  float64 // on the horizontal, W/m2
	Beam    float64 // direct, on a plane that faces the sun, W/m2
	Diffuse float64 // from the sky on the horizontal, W/m2
}

// LinkeTurbidity is the turbidity that [ClearSky] is used with where none is
// known: clean to average air of middle latitudes (common practice: 2 clear
// mountain air, 3 clean, 5 hazy).
const LinkeTurbidity = 3.0

// AirMass gives the relative optical air mass at an apparent zenith in degrees.
// Source: F. Kasten & A. T. Young, Applied Optics 28 (1989) 4735-4738.
func AirMass(apparentZenith float64) float64 {
	z := math.Min(apparentZenith, 90)
	return 1 / (math.Cos(z*degree) + 0.50572*math.Pow(96.07995-z, -1.6364))
}

// ClearSky gives the light under a cloudless sky at an elevation in m, with a
// Linke turbidity (1 to 8; [LinkeTurbidity] where none is known). Dark below the
// horizon.
//
// Source: P. Ineichen & R. Perez, A new airmass independent formulation for the
// Linke turbidity coefficient, Solar Energy 73 (2002) 151-157, with the beam's
// upper bound of R. Perez et al., Solar Energy 73 (2002) 307-317; from memory,
// held against Haurwitz.
func ClearSky(p Position, elevation, turbidity float64) Sky {
	cosZenith := math.Cos(p.Apparent * degree)
	if p.Apparent >= 90 || cosZenith <= 0 {
		return Sky{}
	}
	mass := AirMass(p.Apparent) * StandardPressure(elevation) / 101325
	above := Extraterrestrial(p.Distance)
	h1, h2 := math.Exp(-elevation/8000), math.Exp(-elevation/1250)
	c1, c2 := 5.09e-5*elevation+0.868, 3.92e-5*elevation+0.0387
	global := c1 * above * cosZenith * math.Exp(-c2*mass*(h1+h2*(turbidity-1)))
	beam := (0.664 + 0.163/h1) * above * math.Exp(-0.09*mass*(turbidity-1))
	most := global * (1 - (0.1-0.2*math.Exp(-turbidity))/(0.1+0.882/h1)) / cosZenith
	beam = math.Min(beam, most)
	return Sky{Global: global, Beam: beam, Diffuse: math.Max(0, global-beam*cosZenith)}
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

// Plane is an array's plane: tilt from the horizontal and the azimuth that it
// faces, in degrees.
type Plane struct{ Tilt, Azimuth float64 }

// Incidence gives the cosine of the angle between the sun and the plane's normal;
// below 0 the sun is behind the plane. zenith and azimuth in degrees.
func (p Plane) Incidence(zenith, azimuth float64) float64 {
	sinTilt, cosTilt := math.Sincos(p.Tilt * degree)
	sinZenith, cosZenith := math.Sincos(zenith * degree)
	return cosZenith*cosTilt + sinZenith*sinTilt*math.Cos((azimuth-p.Azimuth)*degree)
}

// Light is what falls on a plane, in W/m2.
type Light struct{ Beam, Sky, Ground float64 }

// Total gives all of it.
func (l Light) Total() float64 { return l.Beam + l.Sky + l.Ground }

// horizon bounds the circumsolar share near the horizon, where the ratio of the
// two cosines grows without end.
const horizon = 0.01745 // cosine of 89 degrees

// OnPlane gives what falls on a plane: the beam, the diffuse light with a share
// of it around the sun, and what the ground reflects (albedo 0 to 1).
//
// Source: J. E. Hay & J. A. Davies, Proc. First Canadian Solar Radiation Data
// Workshop (1980): the share of diffuse light that comes from around the sun is
// the beam's transmission through the air, Beam / Extraterrestrial.
func OnPlane(s Sky, at Position, p Plane, albedo float64) Light {
	incidence := math.Max(0, p.Incidence(at.Apparent, at.Azimuth))
	cosTilt := math.Cos(p.Tilt * degree)
	clear := math.Min(1, math.Max(0, s.Beam/Extraterrestrial(at.Distance)))
	ratio := incidence / math.Max(horizon, math.Cos(at.Apparent*degree))
	return Light{
		Beam:   s.Beam * incidence,
		Sky:    s.Diffuse * (clear*ratio + (1-clear)*(1+cosTilt)/2),
		Ground: s.Global * albedo * (1 - cosTilt) / 2,
	}
}

// OnPlaneIsotropic is [OnPlane] with a sky that is equally bright everywhere: a
// second way, which shows less on a plane that faces the sun. Source: B. Y. H. Liu
// & R. C. Jordan, Solar Energy 7 (1963).
func OnPlaneIsotropic(s Sky, at Position, p Plane, albedo float64) Light {
	l := OnPlane(s, at, p, albedo)
	l.Sky = s.Diffuse * (1 + math.Cos(p.Tilt*degree)) / 2
	return l
}
