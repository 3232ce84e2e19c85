// Package weather reads weather years in the EPW format.
//
// Use [Read] on a file's bytes. What is wrong with a file is a list of
// [Problem], each with its line; what could be read is in the [Year] all the
// same. Nothing here knows a path, panics, or takes more than a few megabytes.
//
// Source of the format: the EPW data dictionary (public), see the field numbers
// at the constants.
package weather

import (
	"fmt"
	"math"
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

// Year is one year of weather in equal steps.
type Year struct {
	Place                            string
	Latitude, Longitude, Elevation   float64 // degrees, degrees, m; NaN where the header does not tell
	Zone                             float64 // hours ahead of UTC; NaN where the header does not tell
	Extremes                         Extremes
	Step                             time.Duration // an hour, or a whole part of one
	Leap                             bool          // 366 days
	Air                              []float64     // dry bulb in K
	Global, Beam, Diffuse            []float64     // W/m2, mean of the step
	Wind                             []float64     // m/s
	Coldest, Hottest                 float64       // of Air, in K: a typical year under-states both
	MissingAir, MissingSun, Repaired int           // steps without a value; steps that were filled from their neighbors
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
