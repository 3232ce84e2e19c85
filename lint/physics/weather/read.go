package weather

import (
	"bytes"
	"fmt"
	"iter"
	"math"
	"strconv"
	"strings"
	"time"
	"unicode"
)

// MaxBytes bounds a file: a year of ten-minute steps takes some 10 MiB.
const MaxBytes = 16 << 20

const (
	headerLines = 8
	headerBytes = 64 << 10 // of one header line
	most        = 100      // problems
	kelvin      = 273.15
)

type reader struct {
	year     *Year
	problems []Problem
	more     int // problems beyond most
	perHour  int
	last     int     // step of the line before, -1 at first
	lines    []int32 // line that each step was read from, 0 for none
	of       int     // calendar year of all lines, -1 where they differ
}

// ReadHeader reads an EPW file's header alone: place, position and extremes. The
// year has no steps. It is nil where the file is no EPW file.
func ReadHeader(text []byte) (*Year, []Problem) {
	r, _ := begin(text)
	return r.finish()
}

// Read reads an EPW file. The year is nil only where not even its header can be
// read. Radiation in Wh/m2 of a step becomes its mean in W/m2. Missing values are
// filled along a straight line between their neighbors for up to six hours, and
// counted; a longer gap is a problem, and its steps keep the last value known
// (air) or stay dark.
//
// At most a hundred problems are listed, in the order of their lines but for those
// of the whole year, which come last; a final one counts the rest.
func Read(text []byte) (*Year, []Problem) {
	r, rest := begin(text)
	if r.year != nil {
		r.data(rest)
		r.fill()
		r.daylight()
	}
	return r.finish()
}

func (r *reader) finish() (*Year, []Problem) {
	if r.more > 0 {
		last := r.problems[len(r.problems)-1]
		r.problems = append(r.problems, Problem{Line: last.Line, Message: fmt.Sprintf("%d more problems are not listed", r.more)})
	}
	return r.year, r.problems
}

// begin reads the header and gives the text behind it.
func begin(text []byte) (*reader, []byte) {
	r := &reader{last: -1, perHour: 1}
	if len(text) > MaxBytes {
		r.problem(1, 0, "the file has %d bytes, more than %d", len(text), MaxBytes)
		return r, nil
	}
	text = bytes.TrimPrefix(text, []byte("\xef\xbb\xbf"))
	if !bytes.HasPrefix(text, []byte("LOCATION,")) {
		r.problem(1, 0, "not an EPW weather file: it begins with a LOCATION line and seven more header lines")
		return r, nil
	}
	r.year = &Year{Latitude: math.NaN(), Longitude: math.NaN(), Elevation: math.NaN(), Zone: math.NaN(),
		Coldest: math.NaN(), Hottest: math.NaN(), Extremes: Extremes{Why: "the header has no line of design conditions"}}
	periods := false
	for line := 1; line <= headerLines && len(text) > 0; line++ {
		var head []byte
		head, text, _ = bytes.Cut(text, []byte("\n"))
		if len(head) > headerBytes {
			r.problem(line, 0, "a header line of %d bytes, more than %d", len(head), headerBytes)
			continue
		}
		parts := strings.Split(strings.TrimSuffix(string(head), "\r"), ",")
		switch strings.ToUpper(strings.TrimSpace(parts[0])) {
		case "LOCATION":
			r.location(line, parts)
		case "DESIGN CONDITIONS":
			r.year.Extremes = extremes(parts)
		case "DATA PERIODS":
			periods = true
			r.periods(line, parts)
		}
	}
	if !periods {
		r.problem(headerLines, 0, "the header has no DATA PERIODS line among its %d: one step an hour is taken", headerLines)
	}
	if math.IsNaN(r.year.Zone) {
		r.year.lack("the header does not tell the time zone")
	}
	r.year.Step = time.Hour / time.Duration(r.perHour)
	r.year.Of = r.year.sunYear(0)
	return r, text
}

func (r *reader) problem(line, field int, format string, args ...any) {
	if len(r.problems) == most {
		r.more++
		return
	}
	r.problems = append(r.problems, Problem{line, field, fmt.Sprintf(format, args...)})
}

func (r *reader) location(line int, parts []string) {
	if len(parts) > 1 {
		r.year.Place = shorten(strings.TrimSpace(parts[1]))
	}
	for _, f := range []struct {
		at          int
		name        string
		least, most float64
		into        *float64
	}{{7, "latitude", -90, 90, &r.year.Latitude}, {8, "longitude", -180, 180, &r.year.Longitude}, {9, "time zone", -13, 15, &r.year.Zone}, {10, "elevation", -450, 6500, &r.year.Elevation}} {
		if f.at > len(parts) {
			r.problem(line, 0, "%s is missing", f.name)
		} else if v, ok := number([]byte(parts[f.at-1])); ok && v >= f.least && v <= f.most {
			*f.into = v
		} else {
			r.problem(line, f.at, "%s: expected a number from %g to %g, found %q", f.name, f.least, f.most, shorten(parts[f.at-1]))
		}
	}
}

func (r *reader) periods(line int, parts []string) {
	if len(parts) < 3 {
		r.problem(line, 0, "the line is cut short: one step an hour is taken")
		return
	}
	n, ok := number([]byte(parts[2]))
	if !ok || n < 1 || n > 60 || math.Mod(60, n) != 0 {
		r.problem(line, 3, "records an hour: expected a number that divides 60, found %q", shorten(parts[2]))
		return
	}
	r.perHour = int(n)
}

// linesOf gives the lines of a text that are not blank, the first one having the
// number that is given.
func linesOf(text []byte, number int) iter.Seq2[int, []byte] {
	return func(yield func(int, []byte) bool) {
		for ; len(text) > 0; number++ {
			var line []byte
			line, text, _ = bytes.Cut(text, []byte("\n"))
			if line = bytes.TrimSpace(line); len(line) > 0 && !yield(number, line) {
				return
			}
		}
	}
}

// number reads a plain decimal number. Words, exponents, NaN and infinities are
// none.
func number(text []byte) (float64, bool) {
	text = bytes.TrimSpace(text)
	if len(text) == 0 || len(text) > 30 {
		return 0, false
	}
	for _, c := range text {
		if (c < '0' || c > '9') && c != '.' && c != '-' && c != '+' {
			return 0, false
		}
	}
	v, err := strconv.ParseFloat(string(text), 64)
	return v, err == nil
}

// shorten makes a found text fit for a message: short, and without what could
// write on a terminal.
func shorten(text string) string {
	const longest = 40
	if len(text) > longest {
		text = text[:longest] + "..."
	}
	return strings.Map(func(c rune) rune {
		if unicode.IsPrint(c) {
			return c
		}
		return '?'
	}, strings.ToValidUTF8(text, "?"))
}
