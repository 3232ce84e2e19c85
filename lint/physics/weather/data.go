package weather

import (
	"bytes"
	"fmt"
	"math"
)

// before gives the days of a common year before each month.
var before = [13]int{0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365}

// data reads the lines behind the header. Each is put in its place by its own
// month, day, hour and minute.
func (r *reader) data(lines [][]byte) {
	for i := range lines {
		if parts := bytes.SplitN(lines[i], []byte(","), 5); len(parts) == 5 && string(bytes.TrimSpace(parts[1])) == "2" && string(bytes.TrimSpace(parts[2])) == "29" {
			r.year.Leap = true
		}
	}
	n := r.year.Steps()
	y := r.year
	for _, s := range []*[]float64{&y.Air, &y.Global, &y.Beam, &y.Diffuse, &y.Wind} {
		*s = make([]float64, n)
		for i := range *s {
			(*s)[i] = math.NaN()
		}
	}
	r.seen = make([]bool, n)
	for i, line := range lines {
		r.line(headerLines+1+i, line)
	}
	missing := 0
	for _, seen := range r.seen {
		if !seen {
			missing++
		}
	}
	if missing > 0 {
		r.problem(headerLines+len(lines), 0, "the year is not whole: %d of its %d steps are missing", missing, n)
	}
}

func (r *reader) line(number int, text []byte) {
	parts := bytes.Split(text, []byte(","))
	if len(parts) < fields {
		r.problem(number, 0, "%d fields, fewer than %d: the line is cut short", len(parts), fields)
		return
	}
	step, ok := r.step(number, parts)
	if !ok {
		return
	}
	switch {
	case r.seen[step]:
		r.problem(number, 0, "this hour stands twice")
		return
	case step < r.last:
		r.problem(number, 0, "out of order: this hour comes before that of the line above")
	}
	r.seen[step], r.last = true, step
	y := r.year
	y.Air[step] = r.value(number, parts, fieldAir) + kelvin
	// Radiation is the energy of the step in Wh/m2; its mean is that per hour.
	perHour := float64(r.perHour)
	y.Global[step] = r.scaled(number, parts, fieldGlobal, perHour)
	y.Beam[step] = r.scaled(number, parts, fieldBeam, perHour)
	y.Diffuse[step] = r.scaled(number, parts, fieldDiffuse, perHour)
	y.Wind[step] = r.value(number, parts, fieldWind)
}

// step places a line in the year. Hour 1 is the first hour of a day; minutes tell
// sub-hourly steps apart, 60 or 0 standing for a whole hour.
func (r *reader) step(line int, parts [][]byte) (int, bool) {
	read := func(field int, name string, least, most int) (int, bool) {
		v, ok := number(string(parts[field-1]))
		if !ok || v != math.Trunc(v) || int(v) < least || int(v) > most {
			r.problem(line, field, "%s: expected a whole number from %d to %d, found %q", name, least, most, shorten(string(parts[field-1])))
			return 0, false
		}
		return int(v), true
	}
	month, ok1 := read(2, "month", 1, 12)
	day, ok2 := read(3, "day", 1, 31)
	hour, ok3 := read(4, "hour", 1, 24)
	minute, ok4 := read(5, "minute", 0, 60)
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

func (r *reader) scaled(line int, parts [][]byte, f field, by float64) float64 {
	f.most /= by
	return r.value(line, parts, f) * by
}

// value reads a field: NaN where it is missing or wrong.
func (r *reader) value(line int, parts [][]byte, f field) float64 {
	text := string(parts[f.number-1])
	v, ok := number(text)
	switch {
	case !ok && len(bytes.TrimSpace(parts[f.number-1])) == 0:
		return math.NaN()
	case !ok:
		r.problem(line, f.number, "%s: expected a number, found %q", f.name, shorten(text))
		return math.NaN()
	case v >= f.missingAbove:
		return math.NaN()
	case v < f.least || v > f.most:
		r.problem(line, f.number, "%s: %g is outside %g to %g", f.name, v, f.least, f.most)
		return math.NaN()
	}
	return v
}

// longestGap is how many hours of missing values are filled from both sides.
const longestGap = 6

// fill closes gaps and takes the year's own extremes.
func (r *reader) fill() {
	y := r.year
	y.Coldest, y.Hottest = math.Inf(1), math.Inf(-1)
	for _, v := range y.Air {
		if !math.IsNaN(v) {
			y.Coldest, y.Hottest = math.Min(y.Coldest, v), math.Max(y.Hottest, v)
		}
	}
	if math.IsInf(y.Coldest, 1) {
		y.Coldest, y.Hottest = math.NaN(), math.NaN()
	}
	y.MissingAir = r.close(y.Air, "air temperature", false)
	for _, s := range [][]float64{y.Global, y.Beam, y.Diffuse} {
		y.MissingSun = max(y.MissingSun, r.close(s, "radiation", true))
	}
	r.close(y.Wind, "wind", true)
}

// close fills gaps along a line, and longer ones with what stands before them, or
// with nothing for what dark is the safe guess. It gives the missing steps.
func (r *reader) close(s []float64, name string, dark bool) int {
	missing := 0
	for i := 0; i < len(s); i++ {
		if !math.IsNaN(s[i]) {
			continue
		}
		end := i
		for end < len(s) && math.IsNaN(s[end]) {
			end++
		}
		missing += end - i
		short := end-i <= longestGap*r.perHour && i > 0 && end < len(s)
		for k := i; k < end; k++ {
			switch {
			case short:
				share := float64(k-i+1) / float64(end-i+1)
				s[k] = s[i-1] + share*(s[end]-s[i-1])
				r.year.Repaired++
			case dark:
				s[k] = 0
			case i > 0:
				s[k] = s[i-1]
			case end < len(s):
				s[k] = s[end]
			}
		}
		if !short && name != "wind" {
			r.problem(headerLines+1+i, 0, "%s is missing for %s", name, hours(end-i, r.perHour))
		}
		i = end
	}
	return missing
}

func hours(steps, perHour int) string {
	return fmt.Sprintf("%.4g hours", float64(steps)/float64(perHour))
}
