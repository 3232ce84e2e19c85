package weather

import (
	"bytes"
	"fmt"
	"math"
	"strconv"
	"strings"
	"time"
)

// MaxBytes bounds a file: a year of ten-minute steps takes some 10 MiB.
const MaxBytes = 32 << 20

const (
	headerLines = 8
	fields      = 35
	most        = 100 // problems
	kelvin      = 273.15
)

// Fields of a data line, counted from 1, with the range that is believed and the
// code from which on a value counts as missing (the format's own codes).
var (
	fieldAir     = field{7, "dry bulb temperature", -90, 65, 99.9}
	fieldGlobal  = field{14, "global horizontal radiation", 0, 1800, 9999}
	fieldBeam    = field{15, "direct normal radiation", 0, 1500, 9999}
	fieldDiffuse = field{16, "diffuse horizontal radiation", 0, 1200, 9999}
	fieldWind    = field{22, "wind speed", 0, 100, 999}
)

type field struct {
	number       int
	name         string
	least, most  float64
	missingAbove float64
}

type reader struct {
	year     *Year
	problems []Problem
	perHour  int
	last     int // step of the line before, -1 at first
	seen     []bool
}

// ReadHeader reads an EPW file's header alone: place, position and extremes. The
// year has no steps. It is nil where the file is no EPW file.
func ReadHeader(text []byte) (*Year, []Problem) {
	r, lines := begin(text)
	if lines == nil {
		return nil, r.problems
	}
	return r.year, r.problems
}

// Read reads an EPW file. The year is nil only where not even its header can be
// read. Radiation in Wh/m2 of a step becomes its mean in W/m2. Missing values are
// filled along a straight line between their neighbors for up to six hours, and
// counted; a longer gap is a problem, and its steps keep the last value known
// (air) or stay dark.
func Read(text []byte) (*Year, []Problem) {
	r, lines := begin(text)
	if lines == nil {
		return nil, r.problems
	}
	r.data(lines)
	r.fill()
	return r.year, r.problems
}

// begin reads the header and gives the lines behind it, nil where there is none.
func begin(text []byte) (*reader, [][]byte) {
	r := &reader{last: -1, perHour: 1, year: &Year{Latitude: math.NaN(), Longitude: math.NaN(), Elevation: math.NaN(), Zone: math.NaN()}}
	if len(text) > MaxBytes {
		r.problem(1, 0, "the file has %d bytes, more than %d", len(text), MaxBytes)
		return r, nil
	}
	text = bytes.TrimPrefix(text, []byte("\xef\xbb\xbf"))
	lines := make([][]byte, 0, headerLines)
	for len(lines) < headerLines {
		line, rest, more := bytes.Cut(text, []byte("\n"))
		lines, text = append(lines, bytes.TrimSuffix(line, []byte("\r"))), rest
		if !more {
			break
		}
	}
	if len(bytes.TrimSpace(text)) == 0 || !strings.HasPrefix(string(lines[0]), "LOCATION,") {
		r.problem(1, 0, "not an EPW weather file: it begins with a LOCATION line and seven more header lines")
		return r, nil
	}
	for i, line := range lines {
		r.header(i+1, string(line))
	}
	return r, bytes.Split(bytes.TrimRight(bytes.ReplaceAll(text, []byte("\r\n"), []byte("\n")), "\n "), []byte("\n"))
}

func (r *reader) problem(line, field int, format string, args ...any) {
	if len(r.problems) < most {
		r.problems = append(r.problems, Problem{line, field, fmt.Sprintf(format, args...)})
	}
}

func (r *reader) header(line int, text string) {
	parts := strings.Split(text, ",")
	switch strings.ToUpper(strings.TrimSpace(parts[0])) {
	case "LOCATION":
		if len(parts) > 1 {
			r.year.Place = strings.TrimSpace(parts[1])
		}
		for _, f := range []struct {
			at          int
			name        string
			least, most float64
			into        *float64
		}{{7, "latitude", -90, 90, &r.year.Latitude}, {8, "longitude", -180, 180, &r.year.Longitude}, {9, "time zone", -13, 15, &r.year.Zone}, {10, "elevation", -450, 6500, &r.year.Elevation}} {
			if f.at > len(parts) {
				r.problem(line, 0, "%s is missing", f.name)
				continue
			}
			if v, ok := number(parts[f.at-1]); ok && v >= f.least && v <= f.most {
				*f.into = v
			} else {
				r.problem(line, f.at, "%s: expected a number from %g to %g, found %q", f.name, f.least, f.most, shorten(parts[f.at-1]))
			}
		}
	case "DESIGN CONDITIONS":
		r.year.Extremes = extremes(parts)
	case "DATA PERIODS":
		if len(parts) > 2 {
			n, err := strconv.Atoi(strings.TrimSpace(parts[2]))
			if err != nil || n < 1 || n > 60 || 60%n != 0 {
				r.problem(line, 3, "records an hour: expected a number that divides 60, found %q", shorten(parts[2]))
				n = 1
			}
			r.perHour = n
		}
	}
	r.year.Step = time.Hour / time.Duration(r.perHour)
}

// extremes reads the extreme design temperatures. Their place behind the word
// Extremes differs by the edition of the handbook: with a maximum wet bulb before
// it the mean minimum is the fifth value, without it the fourth. The one place is
// taken at which the mean minimum lies below the mean maximum and the values of
// 5, 10, 20 and 50 years grow steadily colder and hotter; where neither or both
// fit they are unknown.
func extremes(parts []string) Extremes {
	at := -1
	for i, p := range parts {
		if strings.EqualFold(strings.TrimSpace(p), "Extremes") {
			at = i + 1
		}
	}
	if at < 0 {
		return Extremes{Why: "the header has no extreme temperatures"}
	}
	var found []Extremes
	for _, offset := range []int{3, 4} {
		if e, ok := extremesAt(parts, at+offset); ok {
			found = append(found, e)
		}
	}
	switch len(found) {
	case 1:
		return found[0]
	case 0:
		return Extremes{Why: "the extreme temperatures of the header fit neither known layout"}
	}
	return Extremes{Why: "the extreme temperatures of the header fit both known layouts"}
}

func extremesAt(parts []string, at int) (Extremes, bool) {
	const values = 12 // mean pair, two deviations, four pairs
	if at+values > len(parts) {
		return Extremes{}, false
	}
	var v [values]float64
	for i := range v {
		x, ok := number(parts[at+i])
		if !ok || x < -90 || x > 65 {
			return Extremes{}, false
		}
		v[i] = x
	}
	e := Extremes{Known: true, MeanMin: v[0] + kelvin, MeanMax: v[1] + kelvin}
	if v[0] >= v[1] || v[2] < 0 || v[3] < 0 {
		return Extremes{}, false
	}
	cold, hot := math.Inf(1), math.Inf(-1)
	for i := range 4 {
		lo, hi := v[4+2*i], v[5+2*i]
		if lo >= cold || hi <= hot || lo >= hi {
			return Extremes{}, false
		}
		cold, hot = lo, hi
		e.ReturnMin[i], e.ReturnMax[i] = lo+kelvin, hi+kelvin
	}
	// The least of five years is colder than the mean of the years' least.
	if v[4] >= v[0] || v[5] <= v[1] {
		return Extremes{}, false
	}
	return e, true
}

// number reads a plain decimal number. Words, exponents, NaN and infinities are
// none.
func number(text string) (float64, bool) {
	text = strings.TrimSpace(text)
	if text == "" || len(text) > 30 || strings.Trim(text, "+-.0123456789") != "" {
		return 0, false
	}
	v, err := strconv.ParseFloat(text, 64)
	return v, err == nil
}

func shorten(text string) string {
	const longest = 40
	if len(text) > longest {
		return strings.ToValidUTF8(text[:longest], "?") + "..."
	}
	return strings.ToValidUTF8(text, "?")
}
