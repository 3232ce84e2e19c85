package sun

import (
	"math"

	"stringline/lint/physics"
)

// Plane is an array's plane: tilt from the horizontal and the azimuth that it
// faces, in degrees.
type Plane struct{ Tilt, Azimuth float64 }

// Check refuses a tilt outside 0 to 180 degrees and an azimuth outside -360 to 360.
func (p Plane) Check() error {
	return physics.Check("light on a plane",
		physics.Input{Name: "tilt", Value: p.Tilt, Min: 0, Max: 180, Unit: "deg"},
		physics.Input{Name: "azimuth", Value: p.Azimuth, Min: -360, Max: 360, Unit: "deg"})
}

// Incidence gives the cosine of the angle between the sun and the plane's normal;
// below 0 the sun is behind the plane. zenith and azimuth in degrees.
func (p Plane) Incidence(zenith, azimuth float64) float64 {
	return p.Surface(0).incidence(Position{Apparent: zenith, Azimuth: azimuth}.Ray())
}

// Light is what falls on a plane, in W/m2.
type Light struct{ Beam, Sky, Ground float64 }

// Total gives all of it.
func (l Light) Total() float64 { return l.Beam + l.Sky + l.Ground }

// Surface is a plane over a ground, made ready for many moments.
type Surface struct {
	east, north, up float64 // the normal
	sky, ground     float64 // shares of an even sky and of the lit ground that it sees
}

// Surface makes a plane ready over a ground of an albedo, 0 to 1.
func (p Plane) Surface(albedo float64) Surface {
	sinTilt, cosTilt := math.Sincos(p.Tilt * degree)
	sinAzimuth, cosAzimuth := math.Sincos(p.Azimuth * degree)
	return Surface{
		east: sinTilt * sinAzimuth, north: sinTilt * cosAzimuth, up: cosTilt,
		sky: (1 + cosTilt) / 2, ground: albedo * (1 - cosTilt) / 2,
	}
}

func (s Surface) incidence(r Ray) float64 { return s.east*r.East + s.north*r.North + s.up*r.Up }

// lowSun bounds the light from around the sun where the ratio of the two cosines
// grows without end: the cosine of 85 degrees. Source: R. Perez et al., Solar
// Energy 44 (1990) 271-289, who bound theirs there; from memory.
const lowSun = 0.08715574274765818

// Light gives what falls on the surface: the beam, the diffuse light with a share
// of it around the sun, and what the ground reflects. A mean over an interval may
// hold light although the sun in its middle is just below the horizon: it counts.
//
// Source: J. E. Hay & J. A. Davies, Proc. First Canadian Solar Radiation Data
// Workshop (1980): the share of diffuse light that comes from around the sun is
// the beam's transmission through the air, Beam / Extraterrestrial.
func (s Surface) Light(sky Sky, r Ray) Light {
	if sky == (Sky{}) {
		return Light{}
	}
	incidence := max(0, s.incidence(r))
	around := min(1, max(0, sky.Beam/Extraterrestrial(r.Distance)))
	return Light{
		Beam:   sky.Beam * incidence,
		Sky:    sky.Diffuse * (around*incidence/max(lowSun, r.Up) + (1-around)*s.sky),
		Ground: sky.Global * s.ground,
	}
}

// LightIsotropic is [Surface.Light] with a sky that is equally bright everywhere:
// a second way, which shows less on a plane that faces the sun. Source: B. Y. H.
// Liu & R. C. Jordan, Solar Energy 7 (1963).
func (s Surface) LightIsotropic(sky Sky, r Ray) Light {
	l := s.Light(sky, r)
	l.Sky = sky.Diffuse * s.sky
	return l
}

// OnPlane is [Surface.Light] for one moment.
func OnPlane(s Sky, at Position, p Plane, albedo float64) Light {
	return p.Surface(albedo).Light(s, at.Ray())
}

// OnPlaneIsotropic is [Surface.LightIsotropic] for one moment.
func OnPlaneIsotropic(s Sky, at Position, p Plane, albedo float64) Light {
	return p.Surface(albedo).LightIsotropic(s, at.Ray())
}
