package weather

import (
	"math"

	"stringline/lint/physics/sun"
)

const (
	// longestGap is how many hours of missing values are filled from both sides.
	longestGap = 6
	// guessedShare is the share of a year that may lie in longer gaps before its sums
	// are worth nothing: not two days.
	guessedShare = 0.005
)

// fill closes gaps and takes the year's own extremes.
func (r *reader) fill() {
	y := r.year
	for _, v := range y.Air {
		if !math.IsNaN(v) {
			// Min and Max of a NaN stay NaN: the first value replaces it.
			if math.IsNaN(y.Coldest) {
				y.Coldest, y.Hottest = v, v
			}
			y.Coldest, y.Hottest = min(y.Coldest, v), max(y.Hottest, v)
		}
	}
	var guessedAir, guessedSun int
	y.MissingAir, guessedAir = r.close(y.Air, "air temperature", false)
	if math.IsNaN(y.Coldest) {
		y.Air = nil
	}
	for _, s := range []struct {
		series []float64
		name   string
	}{{y.Global, "global radiation"}, {y.Beam, "direct radiation"}, {y.Diffuse, "diffuse radiation"}} {
		missing, guessed := r.close(s.series, s.name, true)
		y.MissingSun, guessedSun = max(y.MissingSun, missing), max(guessedSun, guessed)
	}
	r.close(y.Wind, "", true)
	y.Guessed = max(guessedAir, guessedSun)
	few := guessedShare * float64(y.Steps())
	if float64(guessedAir) > few {
		y.lack("the air temperature of %.4g hours is missing", r.hours(guessedAir))
	}
	if float64(guessedSun) > few {
		y.lack("the radiation of %.4g hours is missing", r.hours(guessedSun))
	}
}

// close fills gaps along a line, and longer ones with what stands before them, or
// with nothing for what dark is the safe guess. A typical year runs in a circle:
// its last hour stands before its first. It gives the missing steps, and those of
// them in longer gaps. Longer gaps of a series with a name are problems.
func (r *reader) close(s []float64, name string, dark bool) (missing, guessed int) {
	n := len(s)
	first := 0
	for first < n && math.IsNaN(s[first]) {
		first++
	}
	if first == n {
		if dark {
			clear(s)
		}
		if name != "" {
			r.problem(headerLines+1, 0, "%s is missing throughout", name)
		}
		return n, n
	}
	// From the first value once around, so that no gap is cut in two.
	for k := 0; k < n; k++ {
		if !math.IsNaN(s[(first+k)%n]) {
			continue
		}
		length := 1
		for math.IsNaN(s[(first+k+length)%n]) {
			length++
		}
		was, next := s[(first+k-1)%n], s[(first+k+length)%n]
		long := length > longestGap*r.perHour
		for i := range length {
			v := was + (next-was)*float64(i+1)/float64(length+1)
			switch {
			case long && dark:
				v = 0
			case long:
				v = was
			}
			s[(first+k+i)%n] = v
		}
		missing += length
		if long {
			guessed += length
			if name != "" {
				instead := "the last value before stands for them"
				if dark {
					instead = "they are taken as dark"
				}
				r.problem(r.lineNear((first+k)%n), 0, "%s is missing for %.4g hours: %s", name, r.hours(length), instead)
			}
		} else if name != "" {
			r.year.Repaired += length
		}
		k += length
	}
	return missing, guessed
}

// lineNear gives the line of a step, or of the nearest one before it that has a
// line.
func (r *reader) lineNear(step int) int {
	for ; step >= 0; step-- {
		if r.lines[step] > 0 {
			return int(r.lines[step])
		}
	}
	return headerLines + 1
}

func (r *reader) hours(steps int) float64 { return float64(steps) / float64(r.perHour) }

// daylight holds the year's light against the sun over the place: a wrong sign of
// the longitude, another time zone or other units would pass otherwise.
func (r *reader) daylight() {
	const (
		deepNight = -0.17 // sine of 10 degrees below: no hour with its middle there has any sun
		mostNight = 0.02  // share of the light
		mostAbove = 0.9   // of what there is above the air; the clearest places reach 0.75
	)
	y := r.year
	site := sun.Site{Latitude: y.Latitude, Longitude: y.Longitude}
	if site.Check() != nil || math.IsNaN(y.Zone) {
		return
	}
	var all, night, above float64
	for i, ray := range site.Through(y.Middle(0, y.Of), y.Step, len(y.Global)) {
		all += y.Global[i]
		above += max(0, ray.Up) * sun.Extraterrestrial(ray.Distance)
		if ray.Up < deepNight {
			night += y.Global[i]
		}
	}
	switch line := r.lineNear(len(y.Global) - 1); {
	case all == 0 && y.MissingSun == y.Steps(): // told already
	case all == 0:
		y.lack("there is no light in it")
	case night > mostNight*all:
		r.problem(line, fieldGlobal.number, "%.3g %% of the year's global radiation falls at night: latitude, longitude, time zone and hours do not fit each other", 100*night/all)
		y.lack("its light falls at night")
	case all > mostAbove*above:
		r.problem(line, fieldGlobal.number, "the year's global radiation is %.3g %% of that above the air: its unit is not Wh/m2 of a step", 100*all/above)
		y.lack("it has more light than there is")
	}
}
