package sun

import (
	"iter"
	"math"
	"time"
)

// Ray is the direction of the sun as a vector of length 1, lifted by refraction.
// Up is the sine of its elevation, negative at night.
type Ray struct {
	East, North, Up float64
	Distance        float64 // astronomical units
}

// Ray gives the position as a vector.
func (p Position) Ray() Ray {
	sinZenith, cosZenith := math.Sincos(p.Apparent * degree)
	sinAzimuth, cosAzimuth := math.Sincos(p.Azimuth * degree)
	return Ray{East: sinZenith * sinAzimuth, North: sinZenith * cosAzimuth, Up: cosZenith, Distance: p.Distance}
}

// segment is how long the sun's own motion is taken for a straight line, in days:
// wrong by 0.0003 degrees at most.
const segment = 0.5

// Through gives the sun at n moments, start and every step after it (above 0, at
// most a day), as [At] does for each: within 0.001 degrees of it and many times
// faster. Over half a day the hour angle runs evenly, so that each moment is the
// one before turned by the same angle.
func (s Site) Through(start time.Time, step time.Duration, n int) iter.Seq2[int, Ray] {
	return func(yield func(int, Ray) bool) {
		if step <= 0 {
			return
		}
		sinLatitude, cosLatitude := math.Sincos(s.Latitude * degree)
		refraction := s.refraction()
		first, stepDays := daysOf(start), step.Seconds()/secondsADay
		each := stepDays / segment
		w := walkFrom(first)
		for i := 0; i < n; {
			from, to := w.next()
			// The steps that begin in this segment; a step's time is never carried on
			// from segment to segment.
			end := min(n, int(math.Ceil((to.days-first)/stepDays-1e-9)))
			at := (first + float64(i)*stepDays - from.days) / segment
			turn := (360*segment + to.ahead - from.ahead) * degree
			sinHour, cosHour := math.Sincos(from.hourAngle(from.days, s.Longitude)*degree + at*turn)
			sinTurn, cosTurn := math.Sincos(each * turn)
			for ; i < end; i++ {
				sinDeclination := from.sin + at*(to.sin-from.sin)
				cosDeclination := from.cos + at*(to.cos-from.cos)
				r := Ray{
					East:     -cosDeclination * sinHour,
					North:    sinDeclination*cosLatitude - cosDeclination*sinLatitude*cosHour,
					Up:       sinLatitude*sinDeclination + cosLatitude*cosDeclination*cosHour,
					Distance: from.distance + at*(to.distance-from.distance),
				}
				r.lift(refraction)
				if !yield(i, r) {
					return
				}
				at += each
				sinHour, cosHour = sinHour*cosTurn+cosHour*sinTurn, cosHour*cosTurn-sinHour*sinTurn
			}
		}
	}
}

// walker goes through the sun's ephemeris in segments. It computes every second
// node and takes those between from their four neighbors.
type walker struct {
	nodes  [4]node // two segments apart; the walker is between 1 and 2
	middle node    // the node between them, once it is reached
	second bool    // the next segment begins at middle
}

// node is an ephemeris with its time and the declination's sine and cosine.
type node struct {
	ephemeris
	days     float64
	sin, cos float64
}

func nodeOf(days float64, e ephemeris) node {
	sin, cos := math.Sincos(e.declination * degree)
	return node{ephemeris: e, days: days, sin: sin, cos: cos}
}

func walkFrom(days float64) *walker {
	w := &walker{}
	for k := range w.nodes {
		at := days + float64(k-1)*2*segment
		w.nodes[k] = nodeOf(at, solar(at))
	}
	return w
}

// next gives the ends of the next segment.
func (w *walker) next() (from, to node) {
	if w.second {
		from, to = w.middle, w.nodes[2]
		copy(w.nodes[:], w.nodes[1:])
		at := to.days + 4*segment
		w.nodes[3] = nodeOf(at, solar(at))
		w.second = false
		return from, to
	}
	n := &w.nodes
	// The cubic through four evenly spaced points, in the middle.
	cubic := func(a, b, c, d float64) float64 { return (9*(b+c) - (a + d)) / 16 }
	w.middle = nodeOf(n[1].days+segment, ephemeris{
		ahead:       cubic(n[0].ahead, n[1].ahead, n[2].ahead, n[3].ahead),
		declination: cubic(n[0].declination, n[1].declination, n[2].declination, n[3].declination),
		distance:    cubic(n[0].distance, n[1].distance, n[2].distance, n[3].distance),
	})
	w.second = true
	return n[1], w.middle
}

const (
	// lowest is the sine of [risen], below which there is no refraction.
	lowest = -0.014543315936696236
	// highSun is the sine of 15 degrees: above it refraction is all but in
	// proportion to the cotangent of the elevation.
	highSun = 0.25881904510252074
	// cotangent is refraction there, in radians, over that cotangent: equal to the
	// full formula at 15 degrees and within 0.001 degrees of it above.
	cotangent = 0.9654 * 1.02 / 60 * degree
)

// lift moves a true direction seen from the Earth's center to the apparent one
// from its surface, of length 1.
func (r *Ray) lift(refraction float64) {
	// Between two nodes the direction is short of 1 by a millionth or two.
	scale := 1.5 - 0.5*(r.East*r.East+r.North*r.North+r.Up*r.Up)
	r.East, r.North, r.Up = r.East*scale, r.North*scale, r.Up*scale
	level := r.East*r.East + r.North*r.North
	if level < 1e-12 {
		return // straight up or down
	}
	lifted := r.Up - level*parallax/r.Distance
	if lifted >= lowest {
		if lifted > highSun {
			lifted += refraction * cotangent * level / lifted
		} else {
			elevation := math.Asin(lifted)
			lifted = math.Sin(elevation + refraction*lift(elevation/degree)*degree)
		}
		lifted = min(lifted, 1)
	}
	shrink := math.Sqrt(max(0, 1-lifted*lifted) / level)
	r.East, r.North, r.Up = r.East*shrink, r.North*shrink, lifted
}
