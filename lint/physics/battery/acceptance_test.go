package battery

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// A second way: the differential equation in many small steps.
func TestTakeAgainstSmallSteps(t *testing.T) {
	for _, c := range []struct{ most, band, missing, supply, efficiency, duration float64 }{
		{100, 360000, 720000, 80, 0.9, 3 * 3600},   // steady, then taper
		{100, 360000, 300000, 100, 0.9, 3600},      // all taper
		{100, 360000, 300000, 20, 0.9, 3600},       // supply is what bounds it
		{100, 360000, 300000, 20, 0.9, 12 * 3600},  // until it does not
		{100, 360000, 300000, 500, 0.9, 3600},      // more supply than it ever takes
		{100, 0, 300000, 50, 0.5, 4 * 3600},        // no taper: full at once
		{1000, 0.1, 300000, 50, 0.9, 4 * 3600},     // hardly any
		{100, 360000, 360000, 100, 1, 30 * 3600},   // to the end
		{100, 360000, 36000, 10.0001, 0.8, 2 * 60}, // about where supply and acceptance meet
	} {
		a := Acceptance{Most: c.most, Band: c.band}
		if err := a.Check(); err != nil {
			t.Fatal(err)
		}
		const steps = 2_000_000
		missing, want := c.missing, 0.0
		for range steps {
			rate := min(c.supply, c.most)
			if c.band > 0 {
				rate = min(rate, c.most*missing/c.band)
			}
			taken := min(rate*c.duration/steps, missing/c.efficiency)
			want += taken
			missing -= c.efficiency * taken
		}
		got := a.Take(c.missing, c.supply, c.efficiency, c.duration)
		if math.Abs(got-want) > 1e-5*want {
			t.Errorf("%+v: %v, in small steps %v", c, got, want)
		}
	}
}

func TestTakeProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := Acceptance{
			Most: rapid.Float64Range(1e-3, 1e6).Draw(t, "most"),
			Band: rapid.OneOf(rapid.Just(0.0), rapid.Float64Range(0, 1e8)).Draw(t, "band"),
		}
		missing := rapid.Float64Range(0, 1e9).Draw(t, "missing")
		supply := rapid.Float64Range(0, 1e6).Draw(t, "supply")
		efficiency := rapid.Float64Range(0.001, 1).Draw(t, "efficiency")
		duration := rapid.Float64Range(0, 1e5).Draw(t, "duration")
		taken := a.Take(missing, supply, efficiency, duration)
		near := 1 + 1e-9
		if math.IsNaN(taken) || taken < 0 || taken > supply*duration*near || taken > a.Most*duration*near || efficiency*taken > missing*near {
			t.Fatalf("took %v", taken)
		}
		// Two parts of the time are the whole of it.
		part := rapid.Float64Range(0, 1).Draw(t, "part")
		first := a.Take(missing, supply, efficiency, part*duration)
		second := a.Take(max(0, missing-efficiency*first), supply, efficiency, (1-part)*duration)
		if math.Abs(first+second-taken) > 1e-9*max(taken, missing/efficiency) {
			t.Fatalf("%v and %v are not %v", first, second, taken)
		}
		// More offered is never less taken.
		if more := a.Take(missing, 1.1*supply, efficiency, duration); more < taken*(1-1e-9) {
			t.Fatalf("took %v of more, %v of less", more, taken)
		}
	})
	for _, bad := range []Acceptance{{}, {Most: -1}, {Most: math.NaN()}, {Most: 1, Band: -1}, {Most: 1, Band: math.Inf(1)}} {
		refused(t, "no acceptance", bad.Check())
	}
}

// By hand: 100 Ah at 20 A from half, falling from 80 %, full at 2 A, all stored:
// 30 Ah take 1.5 h; the taper's time constant is 20 Ah / 20 A = 1 h, to a tenth
// of the current ln 10 h.
func TestChargeStages(t *testing.T) {
	charge := Charge{Current: 20, Capacity: 360000, From: 0.5, TaperFrom: 0.8, Tail: 2, Efficiency: 1}
	bulk, absorption, err := charge.Stages()
	if err != nil || math.Abs(bulk-1.5*3600) > 1e-6 || math.Abs(absorption-3600*math.Log(10)) > 1e-6 {
		t.Errorf("bulk %v s, absorption %v s, %v", bulk, absorption, err)
	}
	if both, err := charge.Time(); err != nil || both != bulk+absorption {
		t.Errorf("%v s, %v", both, err)
	}
	// At the tail already: nothing to do. Just before it: a little.
	for _, c := range []struct{ from, least, most float64 }{{1, 0, 0}, {0.98, 0, 1e-6}, {0.979, 1, 3600}} {
		charge.From = c.from
		if got, err := charge.Time(); err != nil || got < c.least || got > c.most {
			t.Errorf("from %v: %v s, %v", c.from, got, err)
		}
	}
	charge = Charge{Current: 20, Capacity: 360000, From: 0, TaperFrom: 1, Tail: 0, Efficiency: 0.5}
	if got, err := charge.Time(); err != nil || math.Abs(got-10*3600) > 1e-6 {
		t.Errorf("no taper: %v s, %v", got, err)
	}
	for name, bad := range map[string]Charge{
		"no current":  {Capacity: 1000, TaperFrom: 0.8, Tail: 1, Efficiency: 1},
		"no capacity": {Current: 20, TaperFrom: 0.8, Tail: 1, Efficiency: 1},
		"tail":        {Current: 20, Capacity: 1000, TaperFrom: 0.8, Tail: 20, Efficiency: 1},
		"no tail":     {Current: 20, Capacity: 1000, TaperFrom: 0.8, Efficiency: 1},
		"efficiency":  {Current: 20, Capacity: 1000, TaperFrom: 0.8, Tail: 1},
		"from":        {Current: 20, Capacity: 1000, From: 50, TaperFrom: 0.8, Tail: 1, Efficiency: 1},
		"NaN":         {Current: math.NaN(), Capacity: 1000, TaperFrom: 0.8, Tail: 1, Efficiency: 1},
	} {
		_, err := bad.Time()
		refused(t, name, err)
	}
}

// The two faces of the model agree: after the time that Charge gives, Acceptance
// has let all but the tail's share in.
func TestChargeAgreesWithAcceptance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		charge := Charge{
			Current:    rapid.Float64Range(1, 200).Draw(t, "current"),
			Capacity:   rapid.Float64Range(3600, 3.6e6).Draw(t, "capacity"),
			From:       rapid.Float64Range(0, 1).Draw(t, "from"),
			TaperFrom:  rapid.Float64Range(0, 0.999).Draw(t, "taper from"),
			Efficiency: rapid.Float64Range(0.5, 1).Draw(t, "efficiency"),
		}
		charge.Tail = charge.Current * rapid.Float64Range(0.01, 0.99).Draw(t, "tail")
		time, err := charge.Time()
		if err != nil {
			t.Fatal(err)
		}
		missing := (1 - charge.From) * charge.Capacity
		band := (1 - charge.TaperFrom) * charge.Capacity
		end := min(missing, band*charge.Tail/charge.Current)
		taken := Acceptance{Most: charge.Current, Band: band}.Take(missing, charge.Current, charge.Efficiency, time)
		if left := missing - charge.Efficiency*taken; math.Abs(left-end) > 1e-9*charge.Capacity {
			t.Fatalf("%v A s missing after %v s, want %v", left, time, end)
		}
	})
}

// Common practice, from memory: what a chemistry takes in its last part.
func TestTaperAndTail(t *testing.T) {
	for chemistry, want := range map[string][2]float64{
		"flooded": {0.80, 0.02}, "agm": {0.80, 0.02}, "gel": {0.80, 0.02},
		"lifepo4": {0.95, 0.05}, "nmc": {0.90, 0.05}, "sodium_ion": {0.90, 0.05},
	} {
		from, err1 := TaperFrom(chemistry)
		tail, err2 := TailRate(chemistry)
		if err1 != nil || err2 != nil || from != want[0] || tail != want[1] {
			t.Errorf("%s: %v, %v, %v, %v", chemistry, from, tail, err1, err2)
		}
	}
	_, err := TaperFrom("lead")
	refused(t, "lead", err)
	_, err = TailRate("")
	refused(t, "none", err)
}
