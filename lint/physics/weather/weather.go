// Package weather reads weather years in the EPW format, makes years of clear sky
// for sites without one, and turns both into the light on tilted planes.
//
// Use [Read] on a file's bytes, [ReadHeader] where the extremes are enough,
// [ClearSky.Year] without a file, and [Year.OnPlanes] for what panels receive. What
// is wrong with a file is a list of [Problem], each with its line; what could be
// read is in the [Year] all the same, and [Year.Lacks] tells whether a year's sums
// may rest on it. Nothing here knows a path or panics. Beside the text that it is
// handed, reading takes some 50 bytes a step: half a megabyte for a year of hours.
//
// Source of the format: the EPW data dictionary (public), see the field numbers
// at the constants.
package weather

import (
	"fmt"
	"math"
	"strings"
	"time"
)

// Problem is something wrong with a weather file.
type Problem struct {
	Line    int // counts from 1
	Field   int // counts from 1; 0: the line as a whole
	Message string
}

// Error gives line, field and message.
func (p Problem) Error() string {
	if p.Field > 0 {
		return fmt.Sprintf("line %d, field %d: %s", p.Line, p.Field, p.Message)
	}
	return fmt.Sprintf("line %d: %s", p.Line, p.Message)
}

// Year is one year of weather in equal steps, the first one from 0:00 to its end
// on 1 January in local standard time. Its series are finite throughout and have
// [Year.Steps] values each, or are nil: all of them after [ReadHeader], Air where
// the file has no temperature or a clear sky was asked for without one, Wind with
// a clear sky.
type Year struct {
	Place                          string
	Latitude, Longitude, Elevation float64 // degrees, degrees, m; NaN where the header does not tell
	Zone                           float64 // hours ahead of UTC; NaN where the header does not tell
	Extremes                       Extremes
	Clear                          bool          // a clear sky, no weather
	Of                             int           // the calendar year that the sun is taken from
	Step                           time.Duration // an hour, or a whole part of one
	Leap                           bool          // 366 days
	Air                            []float64     // dry bulb in K
	Global, Beam, Diffuse          []float64     // W/m2, mean of the step
	Wind                           []float64     // m/s; still where it is missing for long, which cools least
	Coldest, Hottest               float64       // of Air, in K; NaN without. A typical year under-states both
	MissingAir, MissingSun         int           // steps without a value of their own
	Repaired                       int           // values that were filled in along a line between their neighbors
	Guessed                        int           // steps in longer gaps: dark, or with the air of the step before

	lacks []string
}

// Extremes are the design temperatures of the header in K. Known is false where
// the header has none, or where their place in it cannot be told for certain.
type Extremes struct {
	Known            bool
	MeanMin, MeanMax float64 // extreme annual mean minimum and maximum
	// ReturnMin and ReturnMax are those of 5, 10, 20 and 50 years.
	ReturnMin, ReturnMax [4]float64
	Why                  string // why they are unknown
}

// Lacks tells why the sums of a year must not rest on this one, in plain words:
// too much of it is missing, the header does not tell its time zone, or its light
// does not fit its place. It is empty for a sound year. Air temperature counts for
// years read from a file alone.
func (y *Year) Lacks() string { return strings.Join(y.lacks, "; ") }

func (y *Year) lack(format string, args ...any) {
	y.lacks = append(y.lacks, fmt.Sprintf(format, args...))
}

// Start gives 0:00 of 1 January in local standard time; in UTC where the zone is
// unknown.
func (y *Year) Start() time.Time { return y.Middle(0, y.Of).Add(-y.Step / 2) }

// Middle gives the moment in the middle of step i, in UTC, of the year that is
// given: the sun of an interval is taken there.
func (y *Year) Middle(i, year int) time.Time {
	start := time.Date(year, 1, 1, 0, 0, 0, 0, time.UTC)
	zone := 0.0
	if !math.IsNaN(y.Zone) {
		zone = y.Zone
	}
	return start.Add(time.Duration(i)*y.Step + y.Step/2 - time.Duration(zone*float64(time.Hour)))
}

// Steps gives the number of steps that a full year has.
func (y *Year) Steps() int {
	days := 365
	if y.Leap {
		days = 366
	}
	return int(time.Duration(days) * 24 * time.Hour / y.Step)
}

// Years that stand for any other: the sun of a date differs by 0.3 degrees at most
// from year to year.
const (
	commonYear = 2026
	leapYear   = 2024
)

// sunYear gives the calendar year to take the sun from: the one that the file is
// of, if it is one and has as many days, else one that stands for all.
func (y *Year) sunYear(of int) int {
	leap := of%4 == 0 && of%100 != 0 || of%400 == 0
	switch {
	case of >= 1950 && of <= 2100 && leap == y.Leap:
		return of
	case y.Leap:
		return leapYear
	}
	return commonYear
}
