package weather

import (
	"bytes"
	"math"
)

const (
	// fields is what a data line has, fieldsOld what the format's first edition had:
	// without albedo and rain, which nothing here reads.
	fields    = 35
	fieldsOld = 32
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
	number      int
	name        string
	least, most float64
	missing     float64
}

// before gives the days of a common year before each month.
var before = [13]int{0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365}

// parts are the fields of a data line.
type parts [fields][]byte

// split cuts a line at its commas and gives how many fields it has, fields at
// most.
func (p *parts) split(line []byte) int {
	for i := range p {
		part, rest, more := bytes.Cut(line, []byte(","))
		p[i], line = part, rest
		if !more {
			return i + 1
		}
	}
	return fields
}

// data reads the lines behind the header. Each is put in its place by its own
// month, day, hour and minute.
func (r *reader) data(text []byte) {
	y := r.year
	var p parts
	for _, line := range linesOf(text, headerLines+1) {
		if n := p.split(line); n >= fieldsOld && isNumber(p[1], 2) && isNumber(p[2], 29) {
			y.Leap = true
			break
		}
	}
	n := y.Steps()
	for _, s := range []*[]float64{&y.Air, &y.Global, &y.Beam, &y.Diffuse, &y.Wind} {
		*s = make([]float64, n)
		for i := range *s {
			(*s)[i] = math.NaN()
		}
	}
	r.lines = make([]int32, n)
	end := headerLines
	for line, text := range linesOf(text, headerLines+1) {
		r.line(line, text, &p)
		end = line
	}
	y.Of = y.sunYear(r.of)
	missing := 0
	for _, line := range r.lines {
		if line == 0 {
			missing++
		}
	}
	if missing > 0 {
		r.problem(end, 0, "the year is not whole: %d of its %d steps are missing", missing, n)
	}
}

func isNumber(text []byte, want float64) bool {
	v, ok := number(text)
	return ok && v == want
}

func (r *reader) line(line int, text []byte, p *parts) {
	if n := p.split(text); n < fieldsOld {
		r.problem(line, 0, "%d fields, fewer than %d: the line is cut short", n, fieldsOld)
		return
	}
	step, ok := r.step(line, p)
	if !ok {
		return
	}
	if earlier := r.lines[step]; earlier > 0 {
		r.problem(line, 0, "this hour stands twice: line %d has it already", earlier)
		return
	}
	if step < r.last {
		r.problem(line, 0, "out of order: this hour comes before that of the line above")
	}
	r.lines[step], r.last = int32(line), step
	if of, ok := number(p[0]); !ok || r.of != 0 && float64(r.of) != of {
		r.of = -1
	} else {
		r.of = int(of)
	}
	y := r.year
	y.Air[step] = r.value(line, p, fieldAir) + kelvin
	// Radiation is the energy of the step in Wh/m2; its mean is that per hour.
	y.Global[step] = r.mean(line, p, fieldGlobal)
	y.Beam[step] = r.mean(line, p, fieldBeam)
	y.Diffuse[step] = r.mean(line, p, fieldDiffuse)
	y.Wind[step] = r.value(line, p, fieldWind)
}

// whole reads a whole number of a range.
func (r *reader) whole(line int, p *parts, field int, name string, least, most int) (int, bool) {
	v, ok := number(p[field-1])
	if !ok || v != math.Trunc(v) || v < float64(least) || v > float64(most) {
		r.problem(line, field, "%s: expected a whole number from %d to %d, found %q", name, least, most, shorten(string(p[field-1])))
		return 0, false
	}
	return int(v), true
}

// step places a line in the year. Hour 1 is the first hour of a day; minutes tell
// sub-hourly steps apart, 60 or 0 standing for a whole hour.
func (r *reader) step(line int, p *parts) (int, bool) {
	month, ok1 := r.whole(line, p, 2, "month", 1, 12)
	day, ok2 := r.whole(line, p, 3, "day", 1, 31)
	hour, ok3 := r.whole(line, p, 4, "hour", 1, 24)
	minute, ok4 := r.whole(line, p, 5, "minute", 0, 60)
	if !ok1 || !ok2 || !ok3 || !ok4 {
		return 0, false
	}
	length := before[month] - before[month-1]
	start := before[month-1]
	if r.year.Leap {
		if month == 2 {
			length = 29
		}
		if month > 2 {
			start++
		}
	}
	if day > length {
		r.problem(line, 3, "month %d has no day %d", month, day)
		return 0, false
	}
	within := 0
	if r.perHour > 1 {
		size := 60 / r.perHour
		if minute == 0 {
			minute = 60
		}
		if minute%size != 0 {
			r.problem(line, 5, "minute %d does not end one of %d steps an hour", minute, r.perHour)
			return 0, false
		}
		within = minute/size - 1
	}
	return ((start+day-1)*24+hour-1)*r.perHour + within, true
}

// mean reads the energy of a step in Wh/m2 as its mean in W/m2.
func (r *reader) mean(line int, p *parts, f field) float64 {
	f.most /= float64(r.perHour)
	return r.value(line, p, f) * float64(r.perHour)
}

// value reads a field: NaN where it is missing or wrong.
func (r *reader) value(line int, p *parts, f field) float64 {
	text := p[f.number-1]
	v, ok := number(text)
	switch {
	case !ok && len(bytes.TrimSpace(text)) == 0:
		return math.NaN()
	case !ok:
		r.problem(line, f.number, "%s: expected a number, found %q", f.name, shorten(string(text)))
		return math.NaN()
	case v >= f.missing:
		return math.NaN()
	case v < f.least || v > f.most:
		r.problem(line, f.number, "%s: %g is outside %g to %g", f.name, v, f.least, f.most)
		return math.NaN()
	}
	return v
}
