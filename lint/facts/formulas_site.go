package facts

import (
	"fmt"
	"math"

	"stringline/lint/physics/weather"
)

// What a weather file tells about a site where the design does not: its position,
// and how cold and hot it gets. The coldest is the header's extreme annual mean
// minimum, never the file's own least: a typical year under-states the cold.

const weatherHeader = "header of the EPW weather file; ASHRAE extreme annual mean minimum and maximum, as the code's note to NEC 690.7 names them (from memory)"

// fromHeader reads an attribute of the site as it is written, else from the
// weather file. The file's name is read on the way, so that the workings and the
// places of a verdict lead to it.
func fromHeader(name, unit, what string, read func(*weather.Year) (si float64, why string)) Key[*Site, float64] {
	return declare(Entry{Collection: "site", Name: name, Unit: unit,
		Formula: "as written, else " + what + " of the weather file's header", Source: "the design; " + weatherHeader},
		func(s *Site, w *Work) float64 {
			if _, given := s.written(w.Entry); given || !siteWeather.Given(s) {
				return readAttribute(s.Subject, w.Entry, w).number
			}
			return s.headed(w, read)
		})
}

func (s *Site) headed(w *Work, read func(*weather.Year) (si float64, why string)) float64 {
	siteWeather.Of(w, s)
	if !w.Known() {
		return 0
	}
	year, problems := s.weather.readHeader()
	if year == nil {
		w.lack(w.Fact.ID)
		w.Note = unreadable(problems)
		return 0
	}
	v, why := read(year)
	if why != "" {
		w.lack(w.Fact.ID)
		w.Note = why
		return 0
	}
	w.Say("%s", s.file.File)
	return v
}

func unreadable(problems []weather.Problem) string {
	why := "it is empty"
	if len(problems) > 0 {
		why = problems[0].Error()
	}
	return "the weather file cannot be read: " + why
}

func told(v float64, what string) (float64, string) {
	if math.IsNaN(v) {
		return 0, "the weather file does not tell its " + what
	}
	return v, ""
}

func extreme(read func(weather.Extremes) float64) func(*weather.Year) (float64, string) {
	return func(y *weather.Year) (float64, string) {
		if !y.Extremes.Known {
			return 0, y.Extremes.Why + "; the file's own least and greatest under-state both"
		}
		return read(y.Extremes), ""
	}
}

var (
	siteColdest = fromHeader("coldest", "degC", "the extreme annual mean minimum", extreme(func(e weather.Extremes) float64 { return e.MeanMin }))
	siteHottest = fromHeader("hottest", "degC", "the extreme annual mean maximum", extreme(func(e weather.Extremes) float64 { return e.MeanMax }))

	siteLatitude = fromHeader("latitude", "deg", "the latitude", func(y *weather.Year) (float64, string) {
		v, why := told(y.Latitude, "latitude")
		return v * math.Pi / 180, why
	})
	siteLongitude = fromHeader("longitude", "deg", "the longitude", func(y *weather.Year) (float64, string) {
		v, why := told(y.Longitude, "longitude")
		return v * math.Pi / 180, why
	})
	siteElevation = fromHeader("elevation", "m", "the elevation", func(y *weather.Year) (float64, string) { return told(y.Elevation, "elevation") })

	_ = returns()
)

// returns declares the extremes of several years, which one record-low year in a
// code's reading does not break, and a careful person looks at.
func returns() []Key[*Site, float64] {
	var all []Key[*Site, float64]
	for i, years := range []int{5, 10, 20, 50} {
		for _, kind := range []struct {
			name, means string
			read        func(weather.Extremes) float64
		}{
			{"coldest", "coldest air", func(e weather.Extremes) float64 { return e.ReturnMin[i] }},
			{"hottest", "hottest air", func(e weather.Extremes) float64 { return e.ReturnMax[i] }},
		} {
			all = append(all, declare(Entry{Collection: "site", Name: fmt.Sprintf("%s_%d_years", kind.name, years), Unit: "degC",
				Means: fmt.Sprintf("%s that returns once in %d years", kind.means, years), Formula: "the weather file's header", Source: weatherHeader},
				func(s *Site, w *Work) float64 {
					if !siteWeather.Given(s) {
						w.lack("site.weather")
						return 0
					}
					return s.headed(w, extreme(kind.read))
				}))
		}
	}
	return all
}
