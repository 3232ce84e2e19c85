package weather

import (
	"math"
	"time"

	"stringline/lint/physics"
	"stringline/lint/physics/sun"
)

// ClearSky is a place without a weather file: a year without a cloud over it.
// What rests on such a year is the most that the sky can give, and has to say so.
type ClearSky struct {
	Latitude, Longitude, Elevation float64       // degrees, degrees, m
	Zone                           float64       // of local standard time, hours ahead of UTC; [ZoneOf] where it is not known
	Turbidity                      float64       // Linke, 1 to 8; [sun.LinkeTurbidity] where it is not known
	Step                           time.Duration // an hour or a whole part of one, 10 s at least
	// Air gives the temperature in K at the middle of a step: days since the start
	// of the year, whole ones at midnight, and the hour of the day, 0 to 24, both in
	// local standard time. nil: the year has no temperatures. [Seasons.Air] is one.
	Air func(day, hour float64) float64
}

// ZoneOf gives the whole hour of local time that is nearest to a longitude in
// degrees: what a place without a stated time zone is taken to keep.
func ZoneOf(longitude float64) float64 { return math.Round(longitude / 15) }

// Year makes the year, of 365 days. Light is taken at the middle of each step.
// It refuses values outside their ranges, and an Air that leaves 173 to 423 K.
func (c ClearSky) Year() (*Year, error) {
	const doing = "year of clear sky"
	site := sun.Site{Latitude: c.Latitude, Longitude: c.Longitude, Elevation: c.Elevation}
	if err := site.Check(); err != nil {
		return nil, err
	}
	if err := physics.Check(doing,
		physics.Input{Name: "time zone", Value: c.Zone, Min: -13, Max: 15, Unit: "h"},
		physics.Input{Name: "turbidity", Value: c.Turbidity, Min: 1, Max: 8},
		physics.Input{Name: "step", Value: c.Step.Seconds(), Min: 10, Max: 3600, Unit: "s"}); err != nil {
		return nil, err
	}
	if time.Hour%c.Step != 0 {
		return nil, physics.Refuse(doing, "an hour does not hold a whole number of steps of %v", c.Step)
	}
	y := &Year{
		Latitude: c.Latitude, Longitude: c.Longitude, Elevation: c.Elevation, Zone: c.Zone,
		Extremes: Extremes{Why: "a clear sky has no extreme temperatures"},
		Clear:    true, Step: c.Step, Coldest: math.NaN(), Hottest: math.NaN(),
	}
	y.Of = y.sunYear(0)
	n := y.Steps()
	y.Global, y.Beam, y.Diffuse = make([]float64, n), make([]float64, n), make([]float64, n)
	air := sun.ClearOver(c.Elevation, c.Turbidity)
	for i, ray := range site.Through(y.Middle(0, y.Of), y.Step, n) {
		sky := air.Sky(ray)
		y.Global[i], y.Beam[i], y.Diffuse[i] = sky.Global, sky.Beam, sky.Diffuse
	}
	if c.Air == nil {
		return y, nil
	}
	y.Air = make([]float64, n)
	perDay := float64(24 * time.Hour / y.Step)
	for i := range y.Air {
		day := (float64(i) + 0.5) / perDay
		v := c.Air(day, 24*(day-float64(int(day))))
		if err := physics.Check(doing, physics.Input{Name: "air temperature", Value: v, Min: 173.15, Max: 423.15, Unit: "K"}); err != nil {
			return nil, err
		}
		y.Air[i] = v
		if i == 0 {
			y.Coldest, y.Hottest = v, v
		}
		y.Coldest, y.Hottest = min(y.Coldest, v), max(y.Hottest, v)
	}
	return y, nil
}

// Seasons is air that swings with the season and the day between a site's coldest
// and hottest: a rough stand-in where no weather is known, good to some 5 K for a
// month's mean at middle latitudes, and never reaching either end.
type Seasons struct {
	Coldest, Hottest float64 // K: what the site's air reaches once a year
	Latitude         float64 // degrees; south of the equator January is warm
}

// What [Seasons] takes for granted, as shares of half the way from coldest to
// hottest: read off one public year (725300 Chicago O'Hare, TMY3) by its first
// harmonics of year and day, and rounded. The rest is weather, which a swing has
// not.
const (
	SeasonShare = 0.48 // swing of the season, warmest on 20 July or half a year later
	DayShare    = 0.12 // swing of the day, warmest at 14 h
	MeanShare   = 0.13 // the year's mean above the middle: cold spells reach farther than hot ones
)

// warmest gives the day of the year that is warmest.
func (s Seasons) warmest() float64 {
	if s.Latitude < 0 {
		return 200 - 365.0/2
	}
	return 200
}

// Through is [Seasons.Air] for steps that are asked for in order, from their
// middles: a cosine a day instead of two a step. It is not for concurrent use.
func (s Seasons) Through(step time.Duration) func(day, hour float64) float64 {
	n := max(1, int(24*time.Hour/step))
	daily, sin, cos := make([]float64, n), make([]float64, n), make([]float64, n)
	for k := range daily {
		hour := (float64(k) + 0.5) * 24 / float64(n)
		daily[k] = DayShare * math.Cos(2*math.Pi*(hour-14)/24)
		sin[k], cos[k] = math.Sincos(2 * math.Pi * hour / 24 / 365)
	}
	half := (s.Hottest - s.Coldest) / 2
	today, sinToday, cosToday := -1, 0.0, 0.0
	return func(day, hour float64) float64 {
		if d := int(day); d != today {
			today = d
			sinToday, cosToday = math.Sincos(2 * math.Pi * (float64(d) - s.warmest()) / 365)
		}
		k := min(n-1, max(0, int(hour*float64(n)/24)))
		return s.Coldest + half*(1+MeanShare+SeasonShare*(cosToday*cos[k]-sinToday*sin[k])+daily[k])
	}
}

// Air gives the temperature in K, for [ClearSky].
func (s Seasons) Air(day, hour float64) float64 {
	warmest := s.warmest()
	half := (s.Hottest - s.Coldest) / 2
	return s.Coldest + half*(1+MeanShare+
		SeasonShare*math.Cos(2*math.Pi*(day-warmest)/365)+
		DayShare*math.Cos(2*math.Pi*(hour-14)/24))
}
