package energy

import (
	"math"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

func hour(h float64) float64 { return h * 3600 }

// Profiles by hand, in W over the hours of a day.
func TestProfiles(t *testing.T) {
	for _, c := range []struct {
		name string
		load Load
		want map[int]float64 // hour: W in January; 0 elsewhere
	}{
		{"evening", Load{Energy: 500 * 3600, Efficiency: 1, Windows: []Window{{hour(18), hour(23)}}},
			map[int]float64{18: 100, 19: 100, 20: 100, 21: 100, 22: 100}},
		{"over midnight, behind an inverter", Load{Energy: 360 * 3600, Efficiency: 0.9, Windows: []Window{{hour(22), hour(2)}}},
			map[int]float64{22: 100, 23: 100, 0: 100, 1: 100}},
		{"half hours", Load{Energy: 200 * 3600, Efficiency: 1, Windows: []Window{{hour(7.5), hour(9.5)}}},
			map[int]float64{7: 50, 8: 100, 9: 50}},
		{"twice a day", Load{Energy: 300 * 3600, Efficiency: 1, Windows: []Window{{hour(6), hour(7)}, {hour(20), hour(22)}}},
			map[int]float64{6: 100, 20: 100, 21: 100}},
		{"to midnight", Load{Energy: 100 * 3600, Efficiency: 1, Windows: []Window{{hour(23), hour(24)}}}, map[int]float64{23: 100}},
		{"from midnight", Load{Energy: 100 * 3600, Efficiency: 1, Windows: []Window{{hour(0), hour(1)}}}, map[int]float64{0: 100}},
		{"24 h to 1 h", Load{Energy: 100 * 3600, Efficiency: 1, Windows: []Window{{hour(24), hour(1)}}}, map[int]float64{0: 100}},
	} {
		got := map[int]float64{}
		months := profiles(Calendar{StepsPerDay: 24}, []Load{c.load})
		for k, w := range months[0] {
			if w != 0 {
				got[k] = math.Round(w*1e6) / 1e6
			}
		}
		if d := cmp.Diff(c.want, got); d != "" {
			t.Errorf("%s: -want +got\n%s", c.name, d)
		}
		if err := c.load.check("x"); err != nil {
			t.Errorf("%s: %v", c.name, err)
		}
	}
	// Evenly through the day, and by month.
	even := profiles(Calendar{StepsPerDay: 24}, []Load{{Energy: 240 * 3600, Efficiency: 1, Months: &[12]float64{1, 0, 2, 11: 0.5}}})
	for m, want := range map[int]float64{0: 10, 1: 0, 2: 20, 11: 5} {
		for k, w := range even[m] {
			if math.Abs(w-want) > 1e-12 {
				t.Errorf("month %d, hour %d: %v W, want %v W", m+1, k, w, want)
			}
		}
	}
}

// The daily load at the bank, by hand: 600 Wh DC, 450 Wh AC at 90 %, an inverter
// of 10 W for 12 h, a controller of 2 W: 600 + 500 + 120 + 48 = 1268 Wh; the AC
// load doubles in December.
func TestLoadPerDay(t *testing.T) {
	loads := []Load{
		{Energy: 600 * 3600, Efficiency: 1},
		{Energy: 450 * 3600, Efficiency: 0.9, Months: &[12]float64{1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 1, 2}},
		Idle(10, 12), Idle(2, 24),
	}
	got, err := LoadPerDay(loads)
	if err != nil || !near(got[0], 1268*3600, 1e-12) || !near(got[11], 1768*3600, 1e-12) {
		t.Errorf("%v, %v", got, err)
	}
}

func TestLoadsRefused(t *testing.T) {
	for name, bad := range map[string]Load{
		"energy":            {Energy: -1, Efficiency: 1},
		"NaN":               {Energy: math.NaN(), Efficiency: 1},
		"no efficiency":     {Energy: 1},
		"efficiency":        {Energy: 1, Efficiency: 92},
		"no hours":          {Energy: 1, Efficiency: 1, Windows: []Window{{hour(18), hour(18)}}},
		"hours in h":        {Energy: 1, Efficiency: 1, Windows: []Window{{-1, 5}}},
		"past the day":      {Energy: 1, Efficiency: 1, Windows: []Window{{hour(18), hour(25)}}},
		"overlap":           {Energy: 1, Efficiency: 1, Windows: []Window{{hour(18), hour(23)}, {hour(22), hour(2)}}},
		"overlap past 0":    {Energy: 1, Efficiency: 1, Windows: []Window{{hour(22), hour(2)}, {hour(1), hour(3)}}},
		"both past 0":       {Energy: 1, Efficiency: 1, Windows: []Window{{hour(22), hour(2)}, {hour(23), hour(1)}}},
		"factor":            {Energy: 1, Efficiency: 1, Months: &[12]float64{5: -1}},
		"too little time":   {Energy: 601 * 3600, Efficiency: 1, Power: 100, Windows: []Window{{hour(18), hour(24)}}},
		"too little day":    {Energy: 2401 * 3600, Efficiency: 1, Power: 100},
		"in December alone": {Energy: 600 * 3600, Efficiency: 1, Power: 100, Windows: []Window{{hour(18), hour(24)}}, Months: &[12]float64{11: 1.01}},
	} {
		_, err := LoadPerDay([]Load{bad})
		refused(t, name, err)
	}
	// Exactly all of its time is enough.
	for _, good := range []Load{
		{Energy: 600 * 3600, Efficiency: 0.5, Power: 100, Windows: []Window{{hour(18), hour(24)}}},
		{Energy: 2400 * 3600, Efficiency: 1, Power: 100},
		{Energy: 1, Efficiency: 1, Windows: []Window{{hour(18), hour(22)}, {hour(22), hour(2)}}}, // end to end
	} {
		if _, err := LoadPerDay([]Load{good}); err != nil {
			t.Error(err)
		}
	}
}

// The day's energy is exact whatever the step and the hours.
func TestProfileEnergyIsExact(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		cal := Calendar{StepsPerDay: rapid.SampledFrom([]int{1, 2, 24, 48, 96, 1440}).Draw(t, "steps")}
		load := Load{Energy: rapid.Float64Range(0, 1e8).Draw(t, "energy"), Efficiency: rapid.Float64Range(0.1, 1).Draw(t, "efficiency")}
		from, to := rapid.Float64Range(0, day).Draw(t, "from"), rapid.Float64Range(0, day).Draw(t, "to")
		if math.Abs(from-to) > 1 {
			load.Windows = []Window{{from, to}}
		}
		if load.check("x") != nil {
			return // just over midnight: less than a second long
		}
		want, err := LoadPerDay([]Load{load})
		if err != nil {
			t.Fatal(err)
		}
		sum := 0.0
		for _, w := range profiles(cal, []Load{load})[7] {
			if w < 0 {
				t.Fatalf("%v W", w)
			}
			sum += w * cal.Step()
		}
		if math.Abs(sum-want[7]) > 1e-9*want[7] {
			t.Fatalf("%v J a day, want %v J", sum, want[7])
		}
	})
}
