package facts

import (
	"math"

	"stringline/lint/physics/energy"
	"stringline/lint/physics/panel"
	"stringline/lint/physics/sun"
	"stringline/lint/physics/weather"
)

// The sky over a site through the year, and what it makes of the panels on a
// controller input. Nothing of it is computed before a fact that needs it is
// asked for, and then once for all that do.

const (
	skyWeather = "weather year"
	skyClear   = "clear sky"

	planeOfArray = "anisotropic sky of Hay and Davies (1980), ground reflection, sun after Meeus; clear sky of Ineichen and Perez (2002)"
)

var siteSky = declare(Entry{Collection: "site", Name: "sky",
	Means:   "what the year's figures rest on: a weather year, or a clear sky all year, which is the most that the site can give",
	Formula: "weather year where the site names a weather file; else clear sky (assumed), from latitude, longitude and elevation, with air that swings between coldest and hottest",
	Source:  "EPW data dictionary; Ineichen and Perez (2002)"},
	func(s *Site, w *Work) string {
		if s.withheld {
			w.lack(WithheldYear)
			w.Note = "the year of sun was left out of this run"
			return ""
		}
		if !siteWeather.Given(s) {
			for _, key := range []Key[*Site, float64]{siteLatitude, siteLongitude, siteElevation, siteColdest, siteHottest} {
				key.Of(w, s)
			}
			w.assume()
			return skyClear
		}
		siteWeather.Of(w, s)
		if !w.Known() {
			return ""
		}
		year, problems := s.weather.read()
		switch {
		case year == nil:
			w.lack("site.weather")
			w.Note = unreadable(problems)
		case year.Lacks() != "":
			w.lack("site.weather")
			w.Note = "the weather file is not enough for a year: " + year.Lacks()
		default:
			w.Say("%s%s", s.file.File, filledIn(year))
		}
		return skyWeather
	})

// sky gives the year of the site's sky; nil where it is unknown.
func (s *Site) sky(w *Work) *weather.Year {
	sky := siteSky.Of(w, s)
	switch {
	case !w.Known():
		return nil
	case sky == skyWeather:
		year, _ := s.weather.read()
		return year
	case s.clear == nil:
		at, air := s.place(w), s.seasons(w)
		if !w.Known() {
			return nil
		}
		year, err := s.shared.clearYear(clearSite{at, air})
		w.physics(0, err)
		s.clear = year
	}
	return s.clear
}

// place gives where the sun is looked at from.
func (s *Site) place(w *Work) sun.Site {
	return sun.Site{Latitude: siteLatitude.Of(w, s) / radian, Longitude: siteLongitude.Of(w, s) / radian, Elevation: siteElevation.Of(w, s)}
}

// radian is a degree in SI.
const radian = math.Pi / 180

func (s *Site) seasons(w *Work) weather.Seasons {
	return weather.Seasons{Coldest: siteColdest.Of(w, s), Hottest: siteHottest.Of(w, s), Latitude: siteLatitude.Of(w, s) / radian}
}

// calendar gives how the steps of a year run.
func calendar(w *Work, y *weather.Year) energy.Calendar {
	c, err := energy.NewCalendar(y.Step.Seconds(), y.Leap)
	w.physics(0, err)
	return c
}

// under says what sky a figure is of, for its workings.
func (s *Site) under(w *Work) string {
	if siteSky.Of(w, s) == skyClear {
		return "under a clear sky all year"
	}
	return "in the weather year"
}

// facing is a direction that some of an input's arrays face, and how its cells
// warm up in it.
type facing struct {
	plane sun.Plane
	warms float64 // K of cells above the air at 800 W/m2
}

// field is an input's strings as the year sees them.
type field struct {
	layout  *panel.Layout
	facings []facing // one for each condition of the layout
	planes  []sun.Plane
	of      []int // of each facing: its plane
}

// field reads the arrays of an input; nil where anything is unknown.
func (i *Input) field(w *Work) *field {
	f := &field{}
	var strings []panel.StringLayout
	for _, a := range i.allArrays(w) {
		plane := sun.Plane{Tilt: arrayTilt.Of(w, a) / radian, Azimuth: arrayAzimuth.Of(w, a) / radian}
		rise := arrayMountingRise.Of(w, a)
		for _, s := range a.all(w) {
			one := panel.StringLayout{Count: int(stringParallel.Of(w, s))}
			for _, p := range s.panels {
				model, warms := panelModel.Of(w, p.panel), panelNominalCell.Of(w, p.panel)+rise-(20+kelvin)
				diodes := 1.0
				if len(s.panels) > 1 {
					diodes = panelDiodes.Of(w, p.panel)
				}
				if !w.Known() {
					continue
				}
				one.Panels = append(one.Panels, panel.Panels{Model: modelOf(model), Count: int(p.count), Diodes: int(diodes), Condition: f.condition(facing{plane, warms})})
			}
			strings = append(strings, one)
		}
	}
	if !w.Known() {
		return nil
	}
	layout, err := panel.NewLayout(strings)
	if err != nil {
		w.fail(err.Error())
		return nil
	}
	f.layout = layout
	return f
}

const kelvin = 273.15

// condition gives the number of a facing.
func (f *field) condition(one facing) int {
	for n, have := range f.facings {
		if have == one {
			return n
		}
	}
	f.facings = append(f.facings, one)
	plane := 0
	for plane < len(f.planes) && f.planes[plane] != one.plane {
		plane++
	}
	if plane == len(f.planes) {
		f.planes = append(f.planes, one.plane)
	}
	f.of = append(f.of, plane)
	return len(f.facings) - 1
}

// conditions puts the facings under light (one value a plane, W/m2) and air (K).
func (f *field) conditions(light func(plane int) float64, air float64, to []panel.Condition) {
	for n, one := range f.facings {
		g := light(f.of[n])
		to[n] = panel.Condition{Irradiance: g, Cell: air + one.warms*g/800}
	}
}

// follow gives the power of the field in W for a series of light on each plane
// and of air. pwm is the voltage that a controller without a tracker holds it at,
// 0 for one that finds the maximum; bulk is the bank's.
func (f *field) follow(light [][]float64, air []float64, pwm, bulk float64) ([]float64, error) {
	if len(f.planes) == 1 && pwm == 0 {
		return f.tabulated(light[0], air)
	}
	return f.searched(light, air, pwm, bulk)
}

// tableDeviation is the largest distance of a table from the search, as a share of
// its largest power, with which it stands for the search: far below what any
// weather year is worth.
const tableDeviation = 1e-3

// searched is follow with a search for each step.
func (f *field) searched(light [][]float64, air []float64, pwm, bulk float64) ([]float64, error) {
	power := make([]float64, len(air))
	follower, to := f.layout.Follow(), make([]panel.Condition, len(f.facings))
	for t := range power {
		dark := true
		for _, on := range light {
			dark = dark && on[t] <= 0
		}
		if dark {
			continue
		}
		f.conditions(func(plane int) float64 { return light[plane][t] }, air[t], to)
		in, err := follower.At(to...)
		if err != nil {
			return nil, err
		}
		if pwm > 0 {
			current, err := in.Current(pwm)
			if err != nil {
				return nil, err
			}
			power[t] = max(0, current) * bulk
			continue
		}
		best, err := in.Maximum()
		if err != nil {
			return nil, err
		}
		power[t] = best.Power()
	}
	return power, nil
}

// tabulated is follow for a field of one plane: one table instead of a search
// for each step.
func (f *field) tabulated(light, air []float64) ([]float64, error) {
	span := panel.Span{Brightest: 1000, Coldest: air[0], Hottest: air[0]}
	for t, g := range light {
		span.Brightest = max(span.Brightest, g)
		span.Coldest, span.Hottest = min(span.Coldest, air[t]), max(span.Hottest, air[t])
	}
	span.Hottest = max(span.Hottest, span.Coldest+1) // a table needs a width
	table, err := f.layout.Tabulate(span, func(g, t float64, to []panel.Condition) {
		f.conditions(func(int) float64 { return g }, t, to)
	})
	if err != nil {
		return nil, err
	}
	if table.Deviation() > tableDeviation {
		return f.searched([][]float64{light}, air, 0, 0)
	}
	power := make([]float64, len(air))
	for t, g := range light {
		if g <= 0 {
			continue
		}
		if power[t], err = table.Power(g, air[t]); err != nil {
			return nil, err
		}
	}
	return power, nil
}

var inputEnergy = declare(Entry{Collection: "pv_inputs", Name: "yearly_energy", Unit: "Wh",
	Means: "energy that its strings could give in a year, before losses and clipping",
	Formula: "sum over the steps of the year of the power of its strings' combined curve, each array under the light in its plane, cells at air + (nominal_cell + mounting_rise - 20 degC) x light / 800 W/m2; " +
		"of a PWM controller their current at bulk_voltage and the drop of the PV runs, times bulk_voltage",
	Source: fiveParameters + "; " + planeOfArray},
	func(i *Input, w *Work) float64 {
		year, f, albedo := i.site.sky(w), i.field(w), siteAlbedo.Of(w, i.site)
		pwm, bulk := 0.0, 0.0
		if controllerKind.Of(w, i.charger.controller) == "pwm" {
			bulk = bankBulk.Of(w, i.charger.bank)
			pwm = bulk + inputDrop.Of(w, i)
		}
		at := i.site.place(w)
		if !w.Known() {
			return 0
		}
		if len(year.Air) == 0 {
			w.fail("the weather file has no air temperature")
			return 0
		}
		light, err := i.site.shared.onPlanes(year, at, albedo, f.planes)
		if err == nil {
			i.power, err = f.follow(light, year.Air, pwm, bulk)
		}
		if w.physics(0, err); err != nil {
			return 0
		}
		joules := 0.0
		for _, watts := range i.power {
			joules += watts * year.Step.Seconds()
		}
		w.Say("%d steps %s", len(i.power), i.site.under(w))
		return joules
	})
