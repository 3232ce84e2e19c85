package energy

import (
	"encoding/json"
	"math"
	"os"
	"testing"

	"pgregory.net/rapid"

	"stringline/lint/physics/converter"
	"stringline/schema/quantity"
)

type publishedClipping struct {
	HalfSine []struct {
		Source         string
		Ratio, Percent float64
	} `json:"half_sine"`
	FullPower []struct {
		Source, Voltage, Current string
		Watts                    float64
	} `json:"full_power"`
}

func published(t *testing.T) (table publishedClipping) {
	t.Helper()
	text, err := os.ReadFile("../../../testdata/published/clipping.json")
	if err != nil {
		t.Fatal(err)
	}
	if err := json.Unmarshal(text, &table); err != nil {
		t.Fatal(err)
	}
	if len(table.HalfSine) != 2 || len(table.FullPower) != 4 {
		t.Fatal("rows are missing")
	}
	return table
}

// at gives a charger of one array that clips at limit W.
func at(limit float64, power []float64) Charger {
	const volts = 25
	return Charger{
		Arrays: []Array{{Power: power}}, Efficiency: 1, BulkVoltage: volts,
		Limit: converter.Limit{Setting: limit / volts, Rating: limit / volts},
	}
}

// Source: check value E6, recomputed: 6.470 % at 1.2 times the limit, 18.464 %
// at 1.5 times; by the closed form and by the simulation.
func TestHalfSinePublished(t *testing.T) {
	cal := calendar(t, 60)
	for _, row := range published(t).HalfSine {
		clipped, _, _, err := HalfSineDay(row.Ratio)
		if err != nil || math.Abs(100*clipped-row.Percent) > 5e-4 { // published to 0.001 %
			t.Errorf("%s: %v %%, %v; published %v %%", row.Source, 100*clipped, err, row.Percent)
		}
		got, err := Clip(cal, at(1000, halfSine(cal, 1, 1000*row.Ratio)), 1000*row.Ratio, 1000)
		if err != nil || math.Abs(100*got.Year.Share()-row.Percent) > 1e-3 {
			t.Errorf("%s: simulated %v %%, %v; published %v %%", row.Source, 100*got.Year.Share(), err, row.Percent)
		}
	}
}

// The simulation comes to the closed form as the step gets finer, at every
// ratio, and from below: a mean over a step hides clipping.
func TestHalfSineAgainstSimulation(t *testing.T) {
	for _, ratio := range []float64{0, 0.5, 1, 1.001, 1.1, 1.2, 1.3, 1.5, 2, 3, 10} {
		clipped, time, gain, err := HalfSineDay(ratio)
		if err != nil {
			t.Fatal(err)
		}
		for _, c := range []struct{ step, share, time float64 }{
			{3600, 6e-3, 3600}, {900, 6e-4, 900}, {300, 5e-5, 300}, {60, 2e-6, 120}, {10, 5e-8, 20},
		} {
			cal := calendar(t, c.step)
			got, err := Clip(cal, at(1000, halfSine(cal, 1, 1000*ratio)), max(1, 1000*ratio), 1000)
			if err != nil {
				t.Fatal(err)
			}
			if d := clipped - got.Year.Share(); d < -1e-12 || d > c.share {
				t.Errorf("ratio %v, %v s: %v clipped, closed form %v", ratio, c.step, got.Year.Share(), clipped)
			}
			if math.Abs(got.Year.Time-time*12*3600) > 2*c.time {
				t.Errorf("ratio %v, %v s: clipped for %v s, closed form %v s", ratio, c.step, got.Year.Time, time*12*3600)
			}
			if d := got.Year.Gain() - gain; math.Abs(d) > 2*ratio*c.share {
				t.Errorf("ratio %v, %v s: gain %v, closed form %v", ratio, c.step, got.Year.Gain(), gain)
			}
		}
	}
	for _, bad := range []float64{-0.1, math.NaN(), math.Inf(1)} {
		_, _, _, err := HalfSineDay(bad)
		refused(t, "no ratio", err)
	}
}

// Source: check value F2, common practice: what a controller can use.
func TestFullPower(t *testing.T) {
	si := func(text string) float64 {
		q, err := quantity.Parse(text)
		if err != nil {
			t.Fatal(err)
		}
		return q.SI
	}
	cal := calendar(t, 3600)
	for _, row := range published(t).FullPower {
		charger := Charger{
			Arrays: []Array{{Power: []float64{1e5}}}, Efficiency: 0.98, BulkVoltage: si(row.Voltage),
			Limit: converter.Limit{Setting: si(row.Current), Rating: si(row.Current)},
		}
		got, err := Clip(cal, charger, 1e5, row.Watts)
		if err != nil || !near(got.Year.Out/3600, row.Watts, 1e-12) {
			t.Errorf("%s: %v W, %v; want %v W", row.Source, got.Year.Out/3600, err, row.Watts)
		}
	}
}

// By hand: four hours at 25 V, 40 A = 1000 W, efficiency 0.9, losses 10 % off
// first; the third hour is hot: 10 K above full power at 3 %/K is 700 W.
func TestClipByHand(t *testing.T) {
	cal := calendar(t, 3600)
	charger := Charger{
		Arrays:     []Array{{Power: []float64{500, 1500, 1000, 0}, Losses: 0.1}, {Power: []float64{500, 500, 0, 0}, Losses: 0.1}},
		Efficiency: 0.9, BulkVoltage: 25, Air: []float64{290, 290, 308.15, 308.15}, AirRise: 15,
		Limit: converter.Limit{Setting: 100, Rating: 40, Derate: 0.03, FullPowerTo: 313.15},
	}
	got, err := Clip(cal, charger, 2000, 1000)
	if err != nil {
		t.Fatal(err)
	}
	// Potentials 810, 1620, 810, 0; out 810, 1000, 700, 0; at half size 405, 810, 405, 0.
	y := got.Year
	if !near(y.Potential, 3240*3600, 1e-12) || !near(y.Out, 2510*3600, 1e-12) || !near(y.AtFullPower, 1620*3600, 1e-12) || y.Time != 2*3600 {
		t.Errorf("%+v", y)
	}
	if !near(y.Share(), 1-2510.0/3240, 1e-12) || !near(y.Gain(), 2510.0/1620-1, 1e-12) {
		t.Errorf("share %v, gain %v", y.Share(), y.Gain())
	}
	if got.Months[0] != y || got.Months[1] != (Clipped{}) || got.Yields()[0] != y.Out || got.Steps != 4 {
		t.Errorf("January is not the whole: %+v", got.Months)
	}
	// The same with PWM: the array's power is at the bank's voltage, nothing clips.
	charger.PWM = true
	if got, err = Clip(cal, charger, 2000, 1000); err != nil || got.Year.Share() != 0 || got.Year.Time != 0 || !near(got.Year.Out, 3240*3600, 1e-12) {
		t.Errorf("PWM: %+v, %v", got.Year, err)
	}
}

// Exactly at the limit nothing is clipped; just above it something is.
func TestClipAtTheLimit(t *testing.T) {
	cal := calendar(t, 3600)
	for _, c := range []struct{ power, hours float64 }{{999.999, 0}, {1000, 0}, {1000.001, 1}} {
		got, err := Clip(cal, at(1000, []float64{c.power}), 1000, 1000)
		if err != nil || got.Year.Time != c.hours*3600 || got.Year.Gain() != 0 {
			t.Errorf("%v W: %+v, %v", c.power, got.Year, err)
		}
	}
	// An array smaller than full power has no gain, even where it clips.
	got, err := Clip(cal, at(1000, []float64{1200, 1200, 300}), 900, 1000)
	if err != nil || got.Year.Gain() != 0 || got.Year.Share() <= 0 || got.Year.AtFullPower != got.Year.Out {
		t.Errorf("smaller array: %+v, %v", got.Year, err)
	}
	// A night has no share and no gain.
	got, err = Clip(cal, at(1000, []float64{0, 0}), 1500, 1000)
	if err != nil || got.Year.Share() != 0 || got.Year.Gain() != 0 {
		t.Errorf("night: %+v, %v", got.Year, err)
	}
}

// The steps of a charger by themselves are those that its year sums up.
func TestSteps(t *testing.T) {
	cal := calendar(t, 1800)
	charger := at(1000, halfSine(cal, 31, 1500))
	potential, out, err := Steps(charger)
	if err != nil {
		t.Fatal(err)
	}
	whole, err := Clip(cal, charger, 1500, 1000)
	if err != nil {
		t.Fatal(err)
	}
	var sumPotential, sumOut float64
	for k := range out {
		sumPotential += potential[k] * 1800
		sumOut += out[k] * 1800
	}
	if !near(sumPotential, whole.Year.Potential, 1e-12) || !near(sumOut, whole.Year.Out, 1e-12) {
		t.Errorf("steps: %v and %v J, their year %+v", sumPotential, sumOut, whole.Year)
	}
	if out[24] != 1000 || potential[24] < 1490 {
		t.Errorf("noon: %v of %v W", out[24], potential[24])
	}
}

func TestClipRefuses(t *testing.T) {
	cal := calendar(t, 3600)
	for name, change := range map[string]func(*Charger){
		"no array":       func(c *Charger) { c.Arrays = nil },
		"empty":          func(c *Charger) { c.Arrays[0].Power = nil },
		"too long":       func(c *Charger) { c.Arrays[0].Power = make([]float64, 8761) },
		"negative":       func(c *Charger) { c.Arrays[0].Power = []float64{1, -1, 1} },
		"NaN":            func(c *Charger) { c.Arrays[0].Power = []float64{1, math.NaN(), 1} },
		"infinite":       func(c *Charger) { c.Arrays[0].Power = []float64{1, math.Inf(1), 1} },
		"unlike lengths": func(c *Charger) { c.Arrays = append(c.Arrays, Array{Power: []float64{1, 2}}) },
		"losses":         func(c *Charger) { c.Arrays[0].Losses = 10 },
		"efficiency":     func(c *Charger) { c.Efficiency = 97 },
		"voltage":        func(c *Charger) { c.BulkVoltage = 0 },
		"setting":        func(c *Charger) { c.Limit.Setting = -1 },
		"no air":         func(c *Charger) { c.Limit.Derate, c.Limit.FullPowerTo = 0.01, 313 },
		"air in degC":    func(c *Charger) { c.Air = []float64{20, 21, 22} },
		"one in degC":    func(c *Charger) { c.Air = []float64{20} },
		"air too short":  func(c *Charger) { c.Air = []float64{290, 290} },
		"rise":           func(c *Charger) { c.AirRise = -5 },
	} {
		charger := at(1000, []float64{1, 2, 3})
		change(&charger)
		_, err := Clip(cal, charger, 1000, 1000)
		refused(t, name, err)
		if name == "too long" || name == "empty" || name == "no array" {
			continue // of a year alone
		}
		_, _, err = Steps(charger)
		refused(t, name, err)
	}
	charger := at(1000, []float64{1, 2, 3})
	_, err := Clip(cal, charger, 0, 1000)
	refused(t, "no nameplate", err)
	_, err = Clip(cal, charger, 1000, 0)
	refused(t, "no full power", err)
	_, err = Clip(Calendar{}, charger, 1000, 1000)
	refused(t, "no calendar", err)
}

// drawCharger gives any admissible charger over n steps.
func drawCharger(t *rapid.T, n int) Charger {
	series := func(low, high float64, name string) []float64 {
		return rapid.SliceOfN(rapid.OneOf(rapid.Just(low), rapid.Just(high), rapid.Float64Range(low, high)), n, n).Draw(t, name)
	}
	most := rapid.SampledFrom([]float64{1e-300, 1, 3000, mostPower}).Draw(t, "most")
	charger := Charger{
		Efficiency:  rapid.Float64Range(0.001, 1).Draw(t, "efficiency"),
		PWM:         rapid.Bool().Draw(t, "PWM"),
		BulkVoltage: rapid.Float64Range(0.1, 1000).Draw(t, "volts"),
		Limit: converter.Limit{
			Setting:     rapid.Float64Range(0, 200).Draw(t, "setting"),
			Rating:      rapid.Float64Range(0, 200).Draw(t, "rating"),
			Derate:      rapid.Float64Range(0, 1).Draw(t, "derate"),
			FullPowerTo: rapid.Float64Range(273, 343).Draw(t, "full power to"),
		},
		Air:     series(coldest, hottest, "air"),
		AirRise: rapid.Float64Range(0, 100).Draw(t, "rise"),
	}
	for range rapid.IntRange(1, 3).Draw(t, "arrays") {
		charger.Arrays = append(charger.Arrays, Array{Power: series(0, most, "power"), Losses: rapid.Float64Range(0, 0.99).Draw(t, "losses")})
	}
	return charger
}

// Clipped energy, its share and its time never fall as the array grows; nothing
// is ever no number.
func TestClippedNeverFallsAsTheArrayGrows(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		cal := Calendar{StepsPerDay: 24}
		n := rapid.IntRange(1, 60).Draw(t, "steps")
		charger := drawCharger(t, n)
		full := rapid.Float64Range(1, 1e5).Draw(t, "full power")
		small, err := Clip(cal, charger, full, full)
		if err != nil {
			t.Fatal(err)
		}
		grown := charger
		grown.Arrays = nil
		factor := rapid.Float64Range(1, 5).Draw(t, "factor")
		for _, a := range charger.Arrays {
			power := make([]float64, n)
			for i := range power {
				power[i] = min(mostPower, a.Power[i]*factor)
			}
			grown.Arrays = append(grown.Arrays, Array{Power: power, Losses: a.Losses})
		}
		large, err := Clip(cal, grown, full*factor, full)
		if err != nil {
			t.Fatal(err)
		}
		a, b := small.Year, large.Year
		for _, v := range []float64{a.Potential, a.Out, a.AtFullPower, a.Share(), a.Gain(), b.Potential, b.Out, b.AtFullPower, b.Share(), b.Gain()} {
			if math.IsNaN(v) || math.IsInf(v, 0) || v < 0 {
				t.Fatalf("%+v, %+v", a, b)
			}
		}
		if b.Potential-b.Out < (a.Potential-a.Out)*(1-1e-12)-1e-12*a.Potential || b.Time < a.Time || b.Out < a.Out*(1-1e-12) {
			t.Fatalf("small %+v, large %+v", a, b)
		}
		// The share as well, unless the cap on the test's power bent the shape.
		bent := false
		for _, array := range charger.Arrays {
			for _, p := range array.Power {
				bent = bent || p*factor > mostPower
			}
		}
		if !bent && b.Share() < a.Share()-1e-12 {
			t.Fatalf("share %v, then %v", a.Share(), b.Share())
		}
		if charger.PWM && (a.Share() != 0 || a.Time != 0) {
			t.Fatalf("PWM clips: %+v", a)
		}
	})
}

// Means over longer steps never show more clipping than the steps they are the
// means of.
func TestAveragingHidesClipping(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		fine, hours := Calendar{StepsPerDay: 96}, Calendar{StepsPerDay: 24}
		n := rapid.IntRange(1, 48).Draw(t, "hours")
		power := rapid.SliceOfN(rapid.Float64Range(0, 3000), 4*n, 4*n).Draw(t, "power")
		means := make([]float64, n)
		for i, p := range power {
			means[i/4] += p / 4
		}
		a, err := Clip(fine, at(1000, power), 2000, 1000)
		if err != nil {
			t.Fatal(err)
		}
		b, err := Clip(hours, at(1000, means), 2000, 1000)
		if err != nil {
			t.Fatal(err)
		}
		if !near(a.Year.Potential, b.Year.Potential, 1e-9) || b.Year.Out < a.Year.Out*(1-1e-12) {
			t.Fatalf("quarters %+v, hours %+v", a.Year, b.Year)
		}
	})
}
