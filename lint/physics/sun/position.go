// Package sun tells where the sun stands, how bright a clear sky is, and what
// falls on a tilted plane.
//
// Angles are in degrees, azimuths clockwise from true north, irradiance in W/m2.
// Use [At] for the position, [ClearSky] for a site without a weather file, and
// [OnPlane] for the plane of an array.
package sun

import (
	"math"
	"time"
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

const degree = math.Pi / 180

// At gives the sun's position, good to 0.01 degrees from 2000 to 2100 (0.003 but
// for refraction near the horizon).
//
// Source: J. Meeus, Astronomical Formulae for Calculators, chapter 18 (solar
// coordinates with the perturbations by Venus, Jupiter and the Moon) and chapter
// 7 (sidereal time), from memory; refraction after Saemundsson as in I. Reda & A.
// Andreas, NREL/TP-560-34302. Held against their worked example and against a
// general astronomy library.
func At(when time.Time, s Site) Position {
	const secondsADay = 86400
	utc := when.UTC()
	// Days since 2000-01-01 12:00 UTC.
	days := float64(utc.Unix()-946728000)/secondsADay + float64(utc.Nanosecond())/(1e9*secondsADay)
	// Dynamical time runs ahead of the clock by some 64 s in 2000 and perhaps 200 s
	// in 2100 (extrapolated); a minute moves the sun by 0.0007 degrees.
	century := (days + (64+0.5*days/365.25)/secondsADay + 36525) / 36525 // Julian centuries from 1900 January 0.5
	ra, declination, distance, nutation, obliquity := apparent(century)

	t := days / 36525
	sidereal := 280.46061837 + 360.98564736629*days + 0.000387933*t*t + nutation*math.Cos(obliquity*degree)
	hour := (sidereal + s.Longitude - ra) * degree
	sinLatitude, cosLatitude := math.Sincos(s.Latitude * degree)
	sinDeclination, cosDeclination := math.Sincos(declination * degree)
	sinHour, cosHour := math.Sincos(hour)

	cosZenith := sinLatitude*sinDeclination + cosLatitude*cosDeclination*cosHour
	zenith := math.Acos(math.Max(-1, math.Min(1, cosZenith))) / degree
	zenith += 8.794 / 3600 / distance * math.Sin(zenith*degree) // parallax: seen from the surface
	azimuth := math.Atan2(-cosDeclination*sinHour, sinDeclination*cosLatitude-cosDeclination*sinLatitude*cosHour) / degree
	if azimuth < 0 {
		azimuth += 360
	}
	return Position{Zenith: zenith, Apparent: zenith - refraction(90-zenith, s), Azimuth: azimuth, Distance: distance}
}

// apparent gives right ascension and declination (degrees), distance (au),
// nutation in longitude and true obliquity (degrees). t counts Julian centuries
// from 1900 January 0.5.
func apparent(t float64) (ra, declination, distance, nutation, obliquity float64) {
	sin := func(d float64) float64 { return math.Sin(d * degree) }
	cos := func(d float64) float64 { return math.Cos(d * degree) }
	meanLongitude := 279.69668 + t*(36000.76892+t*0.0003025)
	anomaly := 358.47583 + t*(35999.04975-t*(0.000150+t*0.0000033))
	eccentricity := 0.01675104 - t*(0.0000418+t*0.000000126)
	center := (1.919460-t*(0.004789+t*0.000014))*sin(anomaly) + (0.020094-0.000100*t)*sin(2*anomaly) + 0.000293*sin(3*anomaly)
	longitude := meanLongitude + center
	distance = 1.0000002 * (1 - eccentricity*eccentricity) / (1 + eccentricity*cos(anomaly+center))
	longitude += 0.00134*cos(153.23+22518.7541*t) + 0.00154*cos(216.57+45037.5082*t) + // Venus
		0.00200*cos(312.69+32964.3577*t) + // Jupiter
		0.00179*sin(350.74+445267.1142*t-0.00144*t*t) + // the Moon
		0.00178*sin(231.19+20.20*t)
	node := 259.183275 - 1934.1420*t
	nutation = -17.2 / 3600 * sin(node)
	obliquity = 23.452294 - t*(0.0130125+t*0.00000164) + 9.2/3600*cos(node)
	longitude += nutation - 20.4898/3600/distance // aberration
	ra = math.Atan2(cos(obliquity)*sin(longitude), cos(longitude)) / degree
	declination = math.Asin(sin(obliquity)*sin(longitude)) / degree
	return ra, declination, distance, nutation, obliquity
}

// refraction gives how much the air lifts the sun, in degrees, at a true
// elevation; none well below the horizon.
func refraction(elevation float64, s Site) float64 {
	if elevation < -0.8333 {
		return 0
	}
	pressure, air := s.Pressure, s.Air
	if pressure == 0 {
		pressure = StandardPressure(s.Elevation)
	}
	if air == 0 {
		air = 285.15
	}
	return pressure / 101000 * 283 / air * 1.02 / (60 * math.Tan((elevation+10.3/(elevation+5.11))*degree))
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
