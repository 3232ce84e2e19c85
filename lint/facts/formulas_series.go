package facts

import (
	"math"
	"time"

	"stringline/lint/physics/energy"
	"stringline/lint/physics/panel"
	"stringline/lint/physics/sun"
	"stringline/lint/physics/weather"
)

// Series for the reports: curves, clear days, and what a meter should show.

const curvePoints = 64

var (
	curveCold = ivCurve("cold", "with cells at cell_cold", func(w *Work, i *Input) func(*String) float64 { return i.cold(w) })
	curveSTC  = ivCurve("standard", "with cells at 25 degC", func(*Work, *Input) func(*String) float64 { return standardCell })
	curveHot  = ivCurve("hot", "with cells at cell_hot", func(w *Work, i *Input) func(*String) float64 { return i.hot(w) })

	_ = pvCurve("cold", "with cells at cell_cold", curveCold)
	_ = pvCurve("standard", "with cells at 25 degC", curveSTC)
	_ = pvCurve("hot", "with cells at cell_hot", curveHot)

	inputMaxima = declare(Entry{Collection: "pv_inputs", Name: "maxima", Unit: "W", Over: "V",
		Means: "every maximum of its strings' power at 1000 W/m2 and 25 degC; more than one where unlike panels share a string", Formula: "maxima of the combined curve, by rising voltage", Source: fiveParameters},
		func(i *Input, w *Work) Curve {
			if alike(i.all(w)) != nil {
				best := i.maximum(w, standardCell)
				return Curve{Over: []float64{best.Voltage}, Values: []float64{best.Power()}}
			}
			in := wired(w, i.all(w), fullSun, standardCell)
			if in == nil {
				return Curve{}
			}
			points, err := in.Maxima()
			w.physics(0, err)
			var all Curve
			for _, p := range points {
				all.Over, all.Values = append(all.Over, p.Voltage), append(all.Values, p.Power())
			}
			return all
		})

	_ = declare(Entry{Collection: "pv_inputs", Name: "maxima_count", Unit: "",
		Means: "how many maxima its strings' power has at 1000 W/m2 and 25 degC; a tracker may rest on a lesser one", Formula: "count of maxima", Source: fiveParameters},
		func(i *Input, w *Work) float64 { return float64(len(inputMaxima.Of(w, i).Over)) })
)

// ivCurve declares an input's current over its voltage at full sun, from short
// to open circuit, with its maximum among the points.
func ivCurve(name, when string, cell func(*Work, *Input) func(*String) float64) Key[*Input, Curve] {
	return declare(Entry{Collection: "pv_inputs", Name: "curve_" + name, Unit: "A", Over: "V",
		Means: "current of its strings over voltage at 1000 W/m2, " + when, Formula: "the combined curve, its maximum and open circuit among the points", Source: fiveParameters},
		func(i *Input, w *Work) Curve {
			in := wired(w, i.all(w), fullSun, cell(w, i))
			if in == nil {
				return Curve{}
			}
			open, err := in.OpenCircuit()
			if w.physics(0, err); err != nil {
				return Curve{}
			}
			best, err := in.Maximum()
			w.physics(0, err)
			var c Curve
			add := func(volts float64) {
				amperes, err := in.Current(volts)
				c.Over, c.Values = append(c.Over, volts), append(c.Values, w.physics(amperes, err))
			}
			placed := false
			for n := range curvePoints {
				volts := open * float64(n) / (curvePoints - 1)
				if !placed && volts >= best.Voltage {
					placed = true
					if volts > best.Voltage {
						add(best.Voltage)
					}
				}
				add(volts)
			}
			c.Values[len(c.Values)-1] = 0 // open circuit, without the search's last digits
			return c
		})
}

// pvCurve declares an input's power over its voltage, point by point of its
// current's.
func pvCurve(name, when string, current Key[*Input, Curve]) Key[*Input, Curve] {
	return declare(Entry{Collection: "pv_inputs", Name: "power_" + name, Unit: "W", Over: "V",
		Means: "power of its strings over voltage at 1000 W/m2, " + when, Formula: "voltage x current, point by point of curve_" + name, Source: fiveParameters},
		func(i *Input, w *Work) Curve {
			iv := current.Of(w, i)
			pv := Curve{Over: iv.Over, Values: make([]float64, len(iv.Values))}
			for n, volts := range iv.Over {
				pv.Values[n] = volts * iv.Values[n]
			}
			return pv
		})
}

// What a meter should show on one string, for a table at hand on the roof.
var (
	_ = overCells("voc_by_cell_temperature", "V", "open-circuit voltage at 1000 W/m2 over cell temperature", func(w *Work, in *panel.Input) float64 {
		return w.physics(in.OpenCircuit())
	})
	_ = overCells("vmp_by_cell_temperature", "V", "voltage at maximum power at 1000 W/m2 over cell temperature", func(w *Work, in *panel.Input) float64 {
		best, err := in.Maximum()
		return w.physics(best.Voltage, err)
	})
	_ = overLight("isc_by_irradiance", "A", "short-circuit current with cells at 25 degC over irradiance", func(_ *Work, in *panel.Input, parallel float64) float64 {
		return in.ShortCircuit() / parallel
	})
	_ = overLight("voc_by_irradiance", "V", "open-circuit voltage with cells at 25 degC over irradiance", func(w *Work, in *panel.Input, _ float64) float64 {
		return w.physics(in.OpenCircuit())
	})
)

func overCells(name, unit, means string, of func(*Work, *panel.Input) float64) Key[*String, Curve] {
	return declare(Entry{Collection: "strings", Name: name, Unit: unit, Over: "degC", Means: means, Formula: "its curve, every 10 K from -30 to 80 degC", Source: fiveParameters},
		func(s *String, w *Work) (c Curve) {
			for degrees := -30.0; degrees <= 80; degrees += 10 {
				in := wired(w, []*String{s}, fullSun, func(*String) float64 { return kelvin + degrees })
				if in == nil {
					return Curve{}
				}
				c.Over, c.Values = append(c.Over, kelvin+degrees), append(c.Values, of(w, in))
			}
			return c
		})
}

func overLight(name, unit, means string, of func(*Work, *panel.Input, float64) float64) Key[*String, Curve] {
	return declare(Entry{Collection: "strings", Name: name, Unit: unit, Over: "W/m2", Means: means, Formula: "its curve, every 100 W/m2 from 100 to 1000", Source: fiveParameters},
		func(s *String, w *Work) (c Curve) {
			parallel := stringParallel.Of(w, s)
			for light := 100.0; light <= fullSun; light += 100 {
				in := wired(w, []*String{s}, light, standardCell)
				if in == nil {
					return Curve{}
				}
				c.Over, c.Values = append(c.Over, light), append(c.Values, of(w, in, parallel))
			}
			return c
		})
}

// Clear days, a fortnight or so from the year's ends of light: the 21st of June
// and of December, every quarter of an hour.

const (
	dayStep  = 15 * time.Minute
	daySteps = int(24 * time.Hour / dayStep)
)

var (
	_ = clearDay("june", time.June)
	_ = clearDay("december", time.December)
)

// clearDay declares what a charger could give and gives on a clear 21st, step by
// step and in all.
func clearDay(name string, month time.Month) (keys [2]Key[*Charger, Curve]) {
	for n, kind := range []struct {
		name, means string
		of          func(potential, out float64) float64
	}{
		{"potential", "if nothing were clipped", func(potential, _ float64) float64 { return potential }},
		{"output", "", func(_, out float64) float64 { return out }},
	} {
		means := "power into the bank's terminals through a clear 21st of that month, hours in local standard time"
		if kind.means != "" {
			means += ", " + kind.means
		}
		keys[n] = declare(Entry{Collection: "chargers", Name: "clear_" + name + "_" + kind.name, Unit: "W", Over: "h", Means: means,
			Formula: "as yearly_yield, under a clear sky in air that swings between the site's coldest and hottest", Source: clippingMethod + "; " + planeOfArray},
			func(c *Charger, w *Work) Curve {
				potential, out := c.clearDay(w, month)
				curve := Curve{}
				for n := range potential {
					curve.Over = append(curve.Over, (float64(n)+0.5)*dayStep.Seconds())
					curve.Values = append(curve.Values, kind.of(potential[n], out[n]))
				}
				return curve
			})
	}
	potential, output := keys[0], keys[1]
	_ = declare(Entry{Collection: "chargers", Name: "clear_" + name + "_energy", Unit: "Wh",
		Means:   "energy into the bank's terminals through a clear 21st of that month, after clipping, the bank always accepting",
		Formula: "sum of clear_" + name + "_output x a quarter of an hour", Source: clippingMethod + "; " + planeOfArray},
		func(c *Charger, w *Work) float64 { return ofDay(output.Of(w, c)) })
	_ = declare(Entry{Collection: "chargers", Name: "clear_" + name + "_clipped", Unit: "Wh",
		Means:   "energy that its current limit keeps out of the bank through a clear 21st of that month",
		Formula: "sum of (clear_" + name + "_potential - clear_" + name + "_output) x a quarter of an hour", Source: clippingMethod + "; " + planeOfArray},
		func(c *Charger, w *Work) float64 { return ofDay(potential.Of(w, c)) - ofDay(output.Of(w, c)) })
	return keys
}

// ofDay gives the energy in J of a day's power.
func ofDay(power Curve) (energy float64) {
	for _, watts := range power.Values {
		energy += watts * dayStep.Seconds()
	}
	return energy
}

// clearDay gives the power at the bank's terminals through a clear day; nil where
// anything is unknown.
func (c *Charger) clearDay(w *Work, month time.Month) (potential, out []float64) {
	at, seasons, albedo := c.site.place(w), c.site.seasons(w), siteAlbedo.Of(w, c.site)
	made := c.asEnergy(w)
	zone := weather.ZoneOf(at.Longitude)
	first := time.Date(clearYear, month, 21, 0, 0, 0, 0, time.UTC).Add(-time.Duration(zone * float64(time.Hour)))
	made.Air = make([]float64, daySteps)
	for n := range made.Air {
		hour := (float64(n) + 0.5) * dayStep.Hours()
		made.Air[n] = seasons.Air(float64(first.YearDay()-1)+hour/24, hour)
	}
	for _, i := range c.allInputs(w) {
		f, pwm := i.field(w), 0.0
		if made.PWM {
			pwm = made.BulkVoltage + inputDrop.Of(w, i)
		}
		losses := i.losses(w)
		if !w.Known() {
			continue
		}
		power, err := f.follow(f.clearLight(at, albedo, first), made.Air, pwm, made.BulkVoltage)
		w.physics(0, err)
		made.Arrays = append(made.Arrays, energy.Array{Power: power, Losses: losses})
	}
	if !w.Known() || len(made.Arrays) == 0 {
		return nil, nil
	}
	potential, out, err := energy.Steps(*made)
	if w.physics(0, err); err != nil {
		return nil, nil
	}
	return potential, out
}

// clearYear is the year whose sun the clear days take: it differs by 0.3 degrees
// at most from that of any other.
const clearYear = 2026

// clearLight gives the light in W/m2 on each plane through a clear day that
// begins at first.
func (f *field) clearLight(at sun.Site, albedo float64, first time.Time) [][]float64 {
	sky := sun.ClearOver(at.Elevation, sun.LinkeTurbidity)
	light := make([][]float64, len(f.planes))
	surfaces := make([]sun.Surface, len(f.planes))
	for p, plane := range f.planes {
		light[p] = make([]float64, daySteps)
		surfaces[p] = plane.Surface(albedo)
	}
	for n, ray := range at.Through(first.Add(dayStep/2), dayStep, daySteps) {
		now := sky.Sky(ray)
		for p := range surfaces {
			light[p][n] = math.Max(0, surfaces[p].Light(now, ray).Total())
		}
	}
	return light
}
