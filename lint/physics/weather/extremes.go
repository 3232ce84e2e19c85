package weather

import "strings"

// extremes reads the extreme design temperatures. Their place behind the word
// Extremes differs by the edition of the handbook: with a maximum wet bulb before
// it the mean minimum is the fifth value, without it the fourth. The one place is
// taken at which the mean minimum lies below the mean maximum and the values of
// 5, 10, 20 and 50 years grow steadily colder and hotter. Where neither fits they
// are unknown, and so they are where more than one does: a header may hold several
// sets.
func extremes(parts []string) Extremes {
	var found []Extremes
	sets := 0
	for i, p := range parts {
		if !strings.EqualFold(strings.TrimSpace(p), "Extremes") {
			continue
		}
		sets++
		for _, before := range []int{3, 4} {
			if e, ok := extremesAt(parts, i+1+before); ok {
				found = append(found, e)
			}
		}
	}
	switch {
	case sets == 0:
		return Extremes{Why: "the header has no extreme temperatures"}
	case len(found) == 0:
		return Extremes{Why: "the extreme temperatures of the header fit neither known layout"}
	case len(found) > 1:
		return Extremes{Why: "the header can be read to have more than one set of extreme temperatures"}
	}
	return found[0]
}

// extremesAt reads mean minimum and maximum, their deviations, and four pairs.
func extremesAt(parts []string, at int) (Extremes, bool) {
	const values = 12
	if at+values > len(parts) {
		return Extremes{}, false
	}
	var v [values]float64
	for i := range v {
		x, ok := number([]byte(parts[at+i]))
		if !ok || x < fieldAir.least || x > fieldAir.most {
			return Extremes{}, false
		}
		v[i] = x
	}
	if v[0] >= v[1] || v[2] < 0 || v[3] < 0 {
		return Extremes{}, false
	}
	e := Extremes{Known: true, MeanMin: v[0] + kelvin, MeanMax: v[1] + kelvin}
	// The least of five years is colder than the mean of the years' least.
	cold, hot := v[0], v[1]
	for i := range 4 {
		lo, hi := v[4+2*i], v[5+2*i]
		if lo >= cold || hi <= hot {
			return Extremes{}, false
		}
		cold, hot = lo, hi
		e.ReturnMin[i], e.ReturnMax[i] = lo+kelvin, hi+kelvin
	}
	return e, true
}
