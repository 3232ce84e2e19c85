package energy

import (
	"errors"
	"math"
	"math/rand/v2"
	"testing"

	"stringline/lint/physics"
	"stringline/lint/physics/converter"
)

func refused(t *testing.T, what string, err error) {
	t.Helper()
	var refusal *physics.Refusal
	if !errors.As(err, &refusal) {
		t.Errorf("%s: got %v, want a refusal", what, err)
	}
}

func near(got, want, relative float64) bool {
	return math.Abs(got-want) <= relative*max(math.Abs(got), math.Abs(want), 1e-300)
}

func calendar(t testing.TB, step float64) Calendar {
	t.Helper()
	cal, err := NewCalendar(step, false)
	if err != nil {
		t.Fatal(err)
	}
	return cal
}

// halfSine gives days of half-sine power from 6 to 18 h with a peak in W, each
// value the exact mean over its step.
func halfSine(cal Calendar, days int, peak float64) []float64 {
	power := make([]float64, days*cal.StepsPerDay)
	step := cal.Step() / 3600
	integral := func(hour float64) float64 { // of the sine from 6 h on
		return 12 / math.Pi * (1 - math.Cos(math.Pi*(min(18, max(6, hour))-6)/12))
	}
	for i := range power {
		from := float64(i%cal.StepsPerDay) * step
		power[i] = max(0, peak*(integral(from+step)-integral(from))/step)
	}
	return power
}

// invented gives a year of power in W and air in K that behaves like one at 46
// degrees north: short dim winters, cloudy and clear days, the same every time.
func invented(cal Calendar, peak float64, seed uint64) (power, air []float64) {
	random := rand.New(rand.NewPCG(seed, 3))
	power, air = make([]float64, cal.Steps()), make([]float64, cal.Steps())
	for d := range cal.Days() {
		season := -math.Cos(2 * math.Pi * (float64(d) + 10) / 365) // -1 midwinter, 1 midsummer
		half := 6 + 1.9*season
		height := peak * (0.62 + 0.35*season) * (0.12 + 0.88*math.Sqrt(random.Float64()))
		for k := range cal.StepsPerDay {
			hour := (float64(k) + 0.5) * cal.Step() / 3600
			i := d*cal.StepsPerDay + k
			if away := math.Abs(hour - 12); away < half {
				power[i] = height * math.Cos(math.Pi/2*away/half)
			}
			air[i] = 281.15 + 11*season - 6*math.Cos(math.Pi*(hour-3)/12)
		}
	}
	return power, air
}

// system is a small system with some of everything: two chargers, one of which
// clips and derates, one of two arrays; another source; loads of every kind.
func system(cal Calendar, seed uint64) Bank {
	south, air := invented(cal, 1900, seed)
	east, _ := invented(cal, 500, seed+1)
	stream := make([]float64, len(south))
	for i := range stream {
		stream[i] = 15 + 10*math.Sin(float64(i)*cal.Step()/day/20)
	}
	return Bank{
		Calendar: cal,
		Chargers: []Charger{
			{
				Arrays: []Array{{Power: south, Losses: 0.1}}, Efficiency: 0.97, BulkVoltage: 26.8, Air: air, AirRise: 12,
				Limit: converter.Limit{Setting: 45, Rating: 50, Derate: 0.02, FullPowerTo: 313.15},
			},
			{
				Arrays: []Array{{Power: east, Losses: 0.1}, {Power: east, Losses: 0.3}}, Efficiency: 0.95, BulkVoltage: 26.8,
				Limit: converter.Limit{Setting: 30, Rating: 30},
			},
		},
		Others: [][]float64{stream},
		Loads: []Load{
			{Energy: 900 * 3600, Efficiency: 0.92, Windows: []Window{{From: 18 * 3600, To: 23.5 * 3600}}},
			{Energy: 1500 * 3600, Efficiency: 1, Months: &[12]float64{1.5, 1.4, 1.2, 1, 1, 0.9, 0.8, 0.8, 1, 1.1, 1.3, 1.5}},
			{Energy: 700 * 3600, Efficiency: 0.9, Windows: []Window{{From: 22 * 3600, To: 6 * 3600}, {From: 12 * 3600, To: 13 * 3600}}},
			Idle(18, 14), Idle(3, 24),
		},
		Store: Store{Usable: 6000 * 3600, RoundTrip: 0.88},
	}
}
