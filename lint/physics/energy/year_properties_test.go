package energy

import (
	"math"
	"math/big"
	"testing"

	"pgregory.net/rapid"

	"stringline/lint/physics/battery"
)

// drawBank gives any admissible bank: powers of nothing and of a gigawatt, no
// store and an endless one, loads of every shape.
func drawBank(t *rapid.T) Bank {
	n := rapid.IntRange(1, 72).Draw(t, "steps")
	bank := Bank{Calendar: Calendar{StepsPerDay: rapid.SampledFrom([]int{1, 8, 24, 96}).Draw(t, "steps a day")}}
	n = min(n, bank.Calendar.Steps())
	for range rapid.IntRange(0, 2).Draw(t, "chargers") {
		bank.Chargers = append(bank.Chargers, drawCharger(t, n))
	}
	bank.Others = append(bank.Others, rapid.SliceOfN(rapid.Float64Range(0, 500), n, n).Draw(t, "other"))
	for range rapid.IntRange(0, 3).Draw(t, "loads") {
		load := Load{
			Energy:     rapid.OneOf(rapid.Just(0.0), rapid.Float64Range(0, 1e8)).Draw(t, "energy"),
			Efficiency: rapid.Float64Range(0.001, 1).Draw(t, "efficiency"),
		}
		if rapid.Bool().Draw(t, "hours") {
			from := rapid.IntRange(0, 24).Draw(t, "from")
			to := rapid.IntRange(0, 24).Draw(t, "to")
			if from != to && !(from == 24 && to == 0) {
				load.Windows = []Window{{hour(float64(from)), hour(float64(to))}}
			}
		}
		bank.Loads = append(bank.Loads, load)
	}
	bank.Store = Store{
		Usable:    rapid.OneOf(rapid.Just(0.0), rapid.Float64Range(0, 1e8), rapid.Just(1e18)).Draw(t, "usable"),
		RoundTrip: rapid.OneOf(rapid.Just(1.0), rapid.Float64Range(0.001, 1)).Draw(t, "round trip"),
	}
	if rapid.Bool().Draw(t, "acceptance") {
		bank.Store.Acceptance = &battery.Acceptance{
			Most: rapid.Float64Range(1e-3, 1e5).Draw(t, "most"),
			Band: rapid.OneOf(rapid.Just(0.0), rapid.Float64Range(0, 1e8)).Draw(t, "band"),
		}
	}
	return bank
}

func yearOf(t *rapid.T, bank Bank, visit func(*Step)) *Year {
	y, err := bank.Year(visit)
	if err != nil {
		t.Fatal(err)
	}
	return y
}

// Whatever is admissible gives numbers, none below nothing, and an account that
// closes to 1e-9 of its largest figure in every step.
func TestYearOfAnything(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		bank := drawBank(t)
		yearOf(t, bank, func(s *Step) {
			largest := max(s.Array, s.Other, s.Load, s.Before, s.Stored)
			if !(s.Residual() <= 1e-9*largest) {
				t.Fatalf("step %d does not close by %v J: %+v", s.Index, s.Residual(), *s)
			}
			for _, v := range []float64{s.Array, s.Converted, s.Clipped, s.Yield, s.Other, s.Load, s.Direct, s.Discharged, s.Unserved, s.Charged, s.StoreLost, s.Curtailed, s.Before, s.Stored} {
				if !(v >= 0) || math.IsInf(v, 0) {
					t.Fatalf("%+v", *s)
				}
			}
			if s.Stored > bank.Store.Usable || s.Charged > 0 && s.Discharged > 0 || s.Curtailed > 0 && s.Unserved > 0 {
				t.Fatalf("%+v", *s)
			}
		})
	})
}

// More load never lowers the unserved hours, and never what stays unserved.
func TestMoreLoadNeverLowersUnserved(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		bank := drawBank(t)
		less := yearOf(t, bank, nil)
		more := bank
		more.Loads = append(append([]Load{}, bank.Loads...), Load{
			Energy: rapid.Float64Range(0, 1e8).Draw(t, "more"), Efficiency: 1, Windows: []Window{{hour(17), hour(21)}},
		})
		if rapid.Bool().Draw(t, "grow") && len(bank.Loads) > 0 {
			more.Loads = append([]Load{}, bank.Loads...)
			more.Loads[0].Energy *= rapid.Float64Range(1, 3).Draw(t, "factor")
		}
		after := yearOf(t, more, nil)
		if after.Total.UnservedTime < less.Total.UnservedTime || after.Total.Unserved < less.Total.Unserved*(1-1e-9)-1e-9*less.Total.Load {
			t.Fatalf("less load: %v s, more load: %v s", less.Total.UnservedTime, after.Total.UnservedTime)
		}
	})
}

// A bigger bank, from full, never raises the unserved hours; with its taper in
// proportion to its size too.
func TestBiggerBankNeverRaisesUnserved(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		bank := drawBank(t)
		bank.Store.Usable = min(bank.Store.Usable, 1e9)
		small := yearOf(t, bank, nil)
		factor := rapid.Float64Range(1, 4).Draw(t, "factor")
		bank.Store.Usable *= factor
		if a := bank.Store.Acceptance; a != nil {
			bank.Store.Acceptance = &battery.Acceptance{Most: a.Most, Band: a.Band * factor}
		}
		big := yearOf(t, bank, nil)
		if big.Total.UnservedTime > small.Total.UnservedTime || big.Total.Unserved > small.Total.Unserved*(1+1e-9)+1e-9*small.Total.Load {
			t.Fatalf("small: %v s, big: %v s", small.Total.UnservedTime, big.Total.UnservedTime)
		}
	})
}

// More sun never raises the unserved hours either.
func TestMoreSunNeverRaisesUnserved(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		bank := drawBank(t)
		less := yearOf(t, bank, nil)
		n := len(bank.Others[0])
		bank.Others = append(bank.Others, rapid.SliceOfN(rapid.Float64Range(0, 500), n, n).Draw(t, "more"))
		more := yearOf(t, bank, nil)
		if more.Total.UnservedTime > less.Total.UnservedTime {
			t.Fatalf("less sun: %v s, more sun: %v s", less.Total.UnservedTime, more.Total.UnservedTime)
		}
	})
}

// A second way, in exact fractions and written another way round: the store
// moves by the net of the step and is cut at both ends.
func TestYearAgainstFractions(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 48).Draw(t, "steps")
		power := rapid.SliceOfN(rapid.IntRange(0, 400), n, n).Draw(t, "power")
		load := rapid.IntRange(0, 200).Draw(t, "load")
		usable := rapid.IntRange(0, 2000).Draw(t, "usable")
		tenths := rapid.IntRange(1, 10).Draw(t, "round trip")

		series := make([]float64, n)
		for i := range series {
			series[i] = float64(power[i])
		}
		y := yearOf(t, steady(Calendar{StepsPerDay: 24}, series, float64(load), float64(usable)*3600, float64(tenths)/10), nil)

		roundTrip, full := big.NewRat(int64(tenths), 10), big.NewRat(int64(usable), 1)
		stored, zero := new(big.Rat).Set(full), new(big.Rat)
		var unserved, curtailed *big.Rat
		hours := 0
		for range 2 {
			unserved, curtailed, hours = new(big.Rat), new(big.Rat), 0
			for _, p := range power {
				net := big.NewRat(int64(p-load), 1)
				if net.Sign() > 0 {
					net.Mul(net, roundTrip)
				}
				stored.Add(stored, net)
				if over := new(big.Rat).Sub(stored, full); over.Sign() > 0 {
					curtailed.Add(curtailed, over.Quo(over, roundTrip))
					stored.Set(full)
				}
				if stored.Sign() < 0 {
					unserved.Sub(unserved, stored)
					stored.Set(zero)
					hours++
				}
			}
		}
		for name, c := range map[string]struct {
			got  float64
			want *big.Rat
		}{"unserved": {y.Total.Unserved, unserved}, "curtailed": {y.Total.Curtailed, curtailed}, "stored": {y.Total.Stored, stored}} {
			want, _ := c.want.Float64()
			if math.Abs(c.got/3600-want) > 1e-7 {
				t.Fatalf("%s %v Wh, in fractions %v Wh", name, c.got/3600, want)
			}
		}
		if y.Total.UnservedTime != float64(hours)*3600 {
			t.Fatalf("unserved %v h, in fractions %d h", y.Total.UnservedTime/3600, hours)
		}
	})
}

// Hours cut into equal parts of the same power give the same account, and no
// more unserved time: cutting shows when within the hour the store ran empty.
func TestPartsOfHoursAgreeWithHours(t *testing.T) {
	hours := calendar(t, 3600)
	for _, acceptance := range []*battery.Acceptance{nil, {Most: 700, Band: 2000 * 3600}} {
		whole := system(hours, 3)
		// Hours that a window cuts would be another load in parts.
		whole.Loads[0].Windows = []Window{{hour(18), hour(23)}}
		whole.Store.Acceptance = acceptance
		want, err := whole.Year(nil)
		if err != nil {
			t.Fatal(err)
		}
		for _, parts := range []int{2, 4, 60} {
			cut := whole
			cut.Calendar = Calendar{StepsPerDay: 24 * parts}
			repeat := func(series []float64) []float64 {
				all := make([]float64, 0, len(series)*parts)
				for _, v := range series {
					for range parts {
						all = append(all, v)
					}
				}
				return all
			}
			cut.Chargers, cut.Others = nil, nil
			for _, c := range whole.Chargers {
				arrays := c.Arrays
				c.Arrays = nil
				for _, a := range arrays {
					c.Arrays = append(c.Arrays, Array{Power: repeat(a.Power), Losses: a.Losses})
				}
				c.Air = repeat(c.Air)
				cut.Chargers = append(cut.Chargers, c)
			}
			for _, o := range whole.Others {
				cut.Others = append(cut.Others, repeat(o))
			}
			got, err := cut.Year(nil)
			if err != nil {
				t.Fatal(err)
			}
			a, b := want.Total, got.Total
			for name, pair := range map[string][2]float64{
				"array": {a.Array, b.Array}, "clipped": {a.Clipped, b.Clipped}, "yield": {a.Yield, b.Yield}, "direct": {a.Direct, b.Direct},
				"charged": {a.Charged, b.Charged}, "discharged": {a.Discharged, b.Discharged}, "unserved": {a.Unserved, b.Unserved},
				"curtailed": {a.Curtailed, b.Curtailed}, "clipped time": {a.ClippedTime, b.ClippedTime},
			} {
				if !near(pair[0], pair[1], 1e-8) {
					t.Errorf("%d parts: %s %v, in hours %v", parts, name, pair[1], pair[0])
				}
			}
			if b.UnservedTime > a.UnservedTime || b.UnservedTime < a.UnservedTime/2 {
				t.Errorf("%d parts: unserved %v s, in hours %v s", parts, b.UnservedTime, a.UnservedTime)
			}
		}
	}
}

// A finer look at the same sky changes the account by little: hours are good
// enough for a year, and quarters of an hour show no less clipping.
func TestFinerSkyNearHours(t *testing.T) {
	var totals []Sum
	for _, step := range []float64{3600, 900, 300} {
		y, err := system(calendar(t, step), 3).Year(nil)
		if err != nil {
			t.Fatal(err)
		}
		totals = append(totals, y.Total)
	}
	for _, s := range totals[1:] {
		if !near(s.Array, totals[0].Array, 0.01) || !near(s.Yield, totals[0].Yield, 0.01) || !near(s.Unserved, totals[0].Unserved, 0.05) ||
			!near(s.UnservedTime, totals[0].UnservedTime, 0.1) {
			t.Errorf("hours %+v, finer %+v", totals[0], s)
		}
	}
}
