// Package sun tells where the sun stands, how bright a clear sky is, and what
// falls on a tilted plane.
//
// Angles are in degrees, azimuths clockwise from true north, irradiance in W/m2.
// For one moment use [At], [ClearSky] and [OnPlane]. For a year use
// [Site.Through], [Clear] and [Plane.Surface]: the same numbers at a small part
// of the cost. [DayOf] has sunrise, noon and sunset.
//
// Everything holds for the ranges that [Site.Check] and [Plane.Check] allow, and
// gives finite numbers there. Callers check once; the functions themselves do not.
package sun

import (
	"math"
	"time"

	"stringline/lint/physics"
)

// Position is where the sun stands. Zenith is without refraction; Apparent is
// what an eye sees, lifted by the air.
type Position struct {
	Zenith, Apparent float64 // degrees from the vertical, 0 to 180
	Azimuth          float64 // degrees clockwise from true north, 0 to 360
	Distance         float64 // astronomical units
}

// Site is a place on the Earth.
type Site struct {
	Latitude  float64 // degrees, north positive
	Longitude float64 // degrees, east positive
	Elevation float64 // m
	// Pressure (Pa) and Air (K) decide the refraction. Zero Pressure stands for
	// that of a standard atmosphere at the elevation, zero Air for 285.15 K.
	Pressure, Air float64
}

// Check refuses a site outside the ranges of this package: latitude -90 to 90,
// longitude -180 to 180, elevation -500 to 9000 m.
func (s Site) Check() error {
	return physics.Check("position of the sun",
		physics.Input{Name: "latitude", Value: s.Latitude, Min: -90, Max: 90, Unit: "deg"},
		physics.Input{Name: "longitude", Value: s.Longitude, Min: -180, Max: 180, Unit: "deg"},
		physics.Input{Name: "elevation", Value: s.Elevation, Min: -500, Max: 9000, Unit: "m"},
		physics.Input{Name: "pressure", Value: s.Pressure, Min: 0, Max: 120000, Unit: "Pa"},
		physics.Input{Name: "air temperature", Value: s.Air, Min: 0, Max: 350, Unit: "K"})
}

const (
	degree      = math.Pi / 180
	secondsADay = 86400
	// parallax is the radius of the Earth in astronomical units: the sun seen from
	// the surface stands lower than from the center.
	parallax = 8.794 / 3600 * degree
)

// At gives the sun's position, good to 0.01 degrees from 2000 to 2100: within
// 0.005 of a general astronomy library at 20,000 random places and moments, and
// up to 0.004 more because clock time (UTC) is taken for the Earth's rotation.
// Above the horizon Apparent hangs on the weather besides: up to 0.1 degrees at
// sunrise.
//
// Source: J. Meeus, Astronomical Formulae for Calculators, chapter 18 (solar
// coordinates with the perturbations by Venus, Jupiter and the Moon) and chapter
// 7 (sidereal time), from memory; refraction after Saemundsson as in I. Reda & A.
// Andreas, NREL/TP-560-34302. Held against their worked example and against that
// library.
func At(when time.Time, s Site) Position {
	days := daysOf(when)
	e := solar(days)
	sinLatitude, cosLatitude := math.Sincos(s.Latitude * degree)
	sinDeclination, cosDeclination := math.Sincos(e.declination * degree)
	sinHour, cosHour := math.Sincos(e.hourAngle(days, s.Longitude) * degree)

	cosZenith := sinLatitude*sinDeclination + cosLatitude*cosDeclination*cosHour
	zenith := math.Acos(math.Max(-1, math.Min(1, cosZenith)))
	zenith = (zenith + parallax/e.distance*math.Sin(zenith)) / degree
	azimuth := math.Atan2(-cosDeclination*sinHour, sinDeclination*cosLatitude-cosDeclination*sinLatitude*cosHour) / degree
	if azimuth < 0 {
		azimuth += 360
	}
	return Position{Zenith: zenith, Apparent: zenith - s.refraction()*lift(90-zenith), Azimuth: azimuth, Distance: e.distance}
}

// daysOf counts days since 2000-01-01 12:00 UTC, whole ones at noon.
func daysOf(when time.Time) float64 {
	return float64(when.Unix()-946728000)/secondsADay + float64(when.Nanosecond())/(1e9*secondsADay)
}

// ephemeris is the sun as seen from the Earth's center at one moment, in degrees
// and astronomical units.
type ephemeris struct {
	ahead       float64 // of the mean sun: the equation of time, 4 minutes a degree
	declination float64
	distance    float64
}

// hourAngle gives degrees west of the meridian, not reduced to a circle.
func (e ephemeris) hourAngle(days, longitude float64) float64 {
	return 360*(days-math.Floor(days)) + e.ahead + longitude
}

// solar gives the sun for a number of days since 2000-01-01 12:00 UTC.
func solar(days float64) ephemeris {
	// Dynamical time runs ahead of the clock by some 64 s in 2000 and perhaps 200 s
	// in 2100 (extrapolated); a minute moves the sun by 0.0007 degrees.
	t := (days + (64+0.5*days/365.25)/secondsADay + 36525) / 36525 // Julian centuries from 1900 January 0.5
	sin := func(d float64) float64 { return math.Sin(d * degree) }
	cos := func(d float64) float64 { return math.Cos(d * degree) }
	meanLongitude := 279.69668 + t*(36000.76892+t*0.0003025)
	anomaly := 358.47583 + t*(35999.04975-t*(0.000150+t*0.0000033))
	eccentricity := 0.01675104 - t*(0.0000418+t*0.000000126)
	center := (1.919460-t*(0.004789+t*0.000014))*sin(anomaly) + (0.020094-0.000100*t)*sin(2*anomaly) + 0.000293*sin(3*anomaly)
	distance := 1.0000002 * (1 - eccentricity*eccentricity) / (1 + eccentricity*cos(anomaly+center))
	node := 259.183275 - 1934.1420*t
	nutation := -17.2 / 3600 * sin(node)
	longitude := meanLongitude + center + nutation - 20.4898/3600/distance + // aberration
		0.00134*cos(153.23+22518.7541*t) + 0.00154*cos(216.57+45037.5082*t) + // Venus
		0.00200*cos(312.69+32964.3577*t) + // Jupiter
		0.00179*sin(350.74+445267.1142*t-0.00144*t*t) + // the Moon
		0.00178*sin(231.19+20.20*t)
	obliquity := 23.452294 - t*(0.0130125+t*0.00000164) + 9.2/3600*cos(node)
	sinObliquity, cosObliquity := math.Sincos(obliquity * degree)
	sinLongitude, cosLongitude := math.Sincos(longitude * degree)
	ascension := math.Atan2(cosObliquity*sinLongitude, cosLongitude) / degree
	// Sidereal time less the turn of the mean sun, 360 degrees a day.
	centuries := days / 36525
	turned := 280.46061837 + 0.98564736629*days + 0.000387933*centuries*centuries + nutation*cosObliquity
	return ephemeris{
		ahead:       math.Remainder(turned-ascension, 360),
		declination: math.Asin(sinObliquity*sinLongitude) / degree,
		distance:    distance,
	}
}

// EquationOfTime gives how far a sundial is ahead of a clock that keeps local mean
// time: -14 to 17 minutes.
func EquationOfTime(when time.Time) time.Duration {
	return time.Duration(solar(daysOf(when)).ahead / 360 * 24 * float64(time.Hour))
}

// risen is the true elevation of the sun's center below which nothing of it is
// seen: its radius and the usual refraction at the horizon, in degrees.
const risen = -0.8333

// refraction gives the site's factor on [lift].
func (s Site) refraction() float64 {
	pressure, air := s.Pressure, s.Air
	if pressure == 0 {
		pressure = StandardPressure(s.Elevation)
	}
	if air == 0 {
		air = 285.15
	}
	return pressure / 101000 * 283 / air
}

// lift gives how much the air of 1010 hPa and 283 K lifts the sun, in degrees, at
// a true elevation in degrees; none below the horizon.
func lift(elevation float64) float64 {
	if elevation < risen {
		return 0
	}
	return 1.02 / (60 * math.Tan((elevation+10.3/(elevation+5.11))*degree))
}

// StandardPressure gives the pressure of the standard atmosphere in Pa at an
// elevation in m, -500 to 9000. Source: ISO 2533.
func StandardPressure(elevation float64) float64 {
	return 101325 * math.Pow(1-2.25577e-5*elevation, 5.25588)
}

// Extraterrestrial gives the irradiance in W/m2 on a plane that faces the sun
// above the air: the solar constant 1361.1 W/m2 over the square of the distance.
// Source: C. A. Gueymard, Solar Energy 168 (2018), from memory.
func Extraterrestrial(distance float64) float64 { return solarConstant / (distance * distance) }

const solarConstant = 1361.1
