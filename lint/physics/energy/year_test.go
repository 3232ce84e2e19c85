package energy

import (
	"math"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"stringline/lint/physics/battery"
)

// steady gives a bank whose sources give power W step by step and whose one load
// takes watts all day.
func steady(cal Calendar, power []float64, watts, usable, roundTrip float64) Bank {
	return Bank{
		Calendar: cal, Others: [][]float64{power}, Loads: []Load{Idle(watts, 24)},
		Store: Store{Usable: usable, RoundTrip: roundTrip},
	}
}

// An account by hand, in Wh: 100 W of load, 250 Wh of store, round trip 0.8, one
// charger of efficiency 0.9 that clips at 400 W. The first pass starts at 250
// and ends at 150; the second is counted.
func TestYearByHand(t *testing.T) {
	cal := Calendar{StepsPerDay: 24}
	charger := at(400, []float64{0, 500, 1000, 0, 0})
	charger.Efficiency = 0.9
	bank := Bank{Calendar: cal, Chargers: []Charger{charger}, Loads: []Load{Idle(100, 24)}, Store: Store{Usable: 250 * 3600, RoundTrip: 0.8}}
	// First pass: 250 at the start, then 150, 250, 250, 150, 50.
	// Second pass from 50: hour 0 discharges 50, 50 unserved; hour 1 has 400 W (450 W
	// less 50 clipped), 300 over, 240 stored; hour 2 has 400 W, 300 over, 12.5 taken
	// for the last 10, 287.5 curtailed; hours 3 and 4 discharge 100 each.
	want := []Step{
		{Index: 0, Before: 50, Stored: 0, Flows: Flows{Load: 100, Discharged: 50, Unserved: 50}},
		{Index: 1, Before: 0, Stored: 240, Flows: Flows{Array: 500, Converted: 50, Clipped: 50, Yield: 400, Load: 100, Direct: 100, Charged: 300, StoreLost: 60}},
		{Index: 2, Before: 240, Stored: 250, Flows: Flows{Array: 1000, Converted: 100, Clipped: 500, Yield: 400, Load: 100, Direct: 100, Charged: 12.5, StoreLost: 2.5, Curtailed: 287.5}},
		{Index: 3, Before: 250, Stored: 150, Flows: Flows{Load: 100, Discharged: 100}},
		{Index: 4, Before: 150, Stored: 50, Flows: Flows{Load: 100, Discharged: 100}},
	}
	var got []Step
	y, err := bank.Year(func(s *Step) {
		if s.Residual() > 1e-9 {
			t.Errorf("step %d does not close by %v J", s.Index, s.Residual())
		}
		w := *s
		for _, v := range []*float64{&w.Array, &w.Converted, &w.Clipped, &w.Yield, &w.Other, &w.Load, &w.Direct, &w.Discharged, &w.Unserved,
			&w.Charged, &w.StoreLost, &w.Curtailed, &w.Before, &w.Stored} {
			*v /= 3600
		}
		got = append(got, w)
	})
	if err != nil {
		t.Fatal(err)
	}
	close := cmpopts.EquateApprox(0, 1e-9)
	if d := cmp.Diff(want, got, close); d != "" {
		t.Errorf("-want +got\n%s", d)
	}
	sum := Sum{
		Flows: Flows{Array: 1500, Converted: 150, Clipped: 550, Yield: 800, Load: 500, Direct: 200, Discharged: 250, Unserved: 50,
			Charged: 312.5, StoreLost: 62.5, Curtailed: 287.5},
		Time: 5, Before: 50, Stored: 50, LeastStored: 0, ClippedTime: 2, UnservedTime: 1, CurtailedTime: 1,
	}
	total := y.Total
	for _, v := range []*float64{&total.Array, &total.Converted, &total.Clipped, &total.Yield, &total.Other, &total.Load, &total.Direct, &total.Discharged, &total.Unserved,
		&total.Charged, &total.StoreLost, &total.Curtailed, &total.Before, &total.Stored, &total.LeastStored, &total.Time, &total.ClippedTime, &total.UnservedTime, &total.CurtailedTime} {
		*v /= 3600
	}
	if d := cmp.Diff(sum, total, close); d != "" {
		t.Errorf("-want +got\n%s", d)
	}
	for i, want := range []bool{true, false, false, false, false} {
		if y.UnservedAt(i) != want {
			t.Errorf("step %d unserved: %v", i, !want)
		}
	}
	if y.UnservedAt(-1) || y.UnservedAt(5) {
		t.Error("steps outside the series are unserved")
	}
}

// The account closes to 1e-9 Wh and to 1e-9 of the array's energy in every step
// of a year, at any step length and with a bounded acceptance too.
func TestYearCloses(t *testing.T) {
	for _, step := range []float64{3600, 900, 300} {
		for _, acceptance := range []*battery.Acceptance{nil, {Most: 900, Band: 1500 * 3600}} {
			bank := system(calendar(t, step), 7)
			bank.Store.Acceptance = acceptance
			steps, stored, used, lost := 0, math.NaN(), 0.0, 0.0
			y, err := bank.Year(func(s *Step) {
				if s.Index != steps || steps > 0 && s.Before != stored {
					t.Fatalf("step %d begins with %v J, %v J were there", s.Index, s.Before, stored)
				}
				steps, stored = steps+1, s.Stored
				in := s.Array + s.Other
				out := s.Used() + s.Lost() + s.Clipped + s.Curtailed + s.Stored - s.Before
				if math.Abs(in-out) > 1e-9*3600 || math.Abs(in-out) > 1e-9*max(in, s.Load) || s.Residual() > 1e-9*3600 {
					t.Fatalf("step %d: in %v J, out %v J, residual %v J", s.Index, in, out, s.Residual())
				}
				for _, v := range []float64{s.Array, s.Converted, s.Clipped, s.Yield, s.Other, s.Load, s.Direct, s.Discharged, s.Unserved, s.Charged, s.StoreLost, s.Curtailed} {
					if v < 0 || math.IsNaN(v) {
						t.Fatalf("%+v", s)
					}
				}
				if s.Stored < 0 || s.Stored > bank.Store.Usable {
					t.Fatalf("%v J in store", s.Stored)
				}
				used += s.Used()
				lost += s.Lost()
			})
			if err != nil {
				t.Fatal(err)
			}
			sum := &y.Total
			if steps != y.Steps || steps != bank.Calendar.Steps() || sum.Time != 365*86400 {
				t.Fatalf("%d steps, %v s", steps, sum.Time)
			}
			if sum.Residual() > 1e-9*sum.Array || !near(sum.Used(), used, 1e-9) || !near(sum.Lost(), lost, 1e-9) {
				t.Errorf("the year does not close: %v J", sum.Residual())
			}
			// The example has some of everything, or it would prove little.
			if sum.Clipped <= 0 || sum.Curtailed <= 0 || sum.UnservedTime <= 0 || sum.UnservedTime > sum.Time/2 || sum.StoreLost <= 0 {
				t.Errorf("a tame year: %+v", *sum)
			}
			for m := range y.Months {
				if month := &y.Months[m]; month.Residual() > 1e-9*month.Array || month.Time != float64(bank.Calendar.DaysIn(m+1))*86400 {
					t.Errorf("month %d: %+v", m+1, *month)
				}
			}
		}
	}
}

// Two passes: a bank too small to be full by the year's end begins the counted
// pass with what it ended with, not full.
func TestSecondPassIsCounted(t *testing.T) {
	cal := Calendar{StepsPerDay: 24}
	// 100 Wh a step of load, nothing in: full for 10 steps, and in the second pass for none.
	y, err := steady(cal, make([]float64, 48), 100, 1000*3600, 1).Year(nil)
	if err != nil || y.Total.UnservedTime != 48*3600 || y.Total.Before != 0 {
		t.Errorf("%+v, %v", y.Total, err)
	}
	// Where each day brings back what it took, nothing is unserved, also at the edge:
	// the store is just large enough for the night.
	power := make([]float64, 48)
	for i := range power {
		if i%24 >= 12 {
			power[i] = 225 // 125 over; 100 of it comes back at 0.8
		}
	}
	for _, c := range []struct{ usable, hours float64 }{{1200, 0}, {1199.9, 2}, {1200.1, 0}} {
		y, err := steady(cal, power, 100, c.usable*3600, 0.8).Year(nil)
		if err != nil || y.Total.UnservedTime != c.hours*3600 {
			t.Errorf("%v Wh: unserved %v h, %v; want %v h", c.usable, y.Total.UnservedTime/3600, err, c.hours)
		}
	}
}

// A store that is just enough to the last bit is enough, whatever the rounding of
// the numbers in between: rounding alone is no unserved hour.
func TestRoundingIsNotUnserved(t *testing.T) {
	for _, perDay := range []int{24, 144, 1440} {
		cal := Calendar{StepsPerDay: perDay}
		power := make([]float64, 3*perDay)
		for i := range power {
			if i%perDay >= perDay/3 {
				power[i] = 700.7
			}
		}
		for _, watts := range []float64{33.3, 77.7, 123.4, 0.1} {
			night := watts * 8 * 3600
			for _, c := range []struct {
				share float64
				any   bool
			}{{1, false}, {1 - 1e-6, true}} {
				y, err := steady(cal, power, watts, night*c.share, 0.87).Year(nil)
				if err != nil || (y.Total.UnservedTime > 0) != c.any {
					t.Errorf("%d steps, %v W, store %v of the night: unserved %v s, %v", perDay, watts, c.share, y.Total.UnservedTime, err)
				}
			}
		}
	}
}

// A bank with nothing to charge it serves nothing all year; one with nothing to
// feed is full all year.
func TestYearOfLittle(t *testing.T) {
	cal := Calendar{StepsPerDay: 24}
	y, err := Bank{Calendar: cal, Loads: []Load{Idle(5, 24)}, Store: Store{Usable: 3600, RoundTrip: 1}}.Year(nil)
	if err != nil || y.Total.UnservedTime != 8760*3600 {
		t.Errorf("%+v, %v", y, err)
	}
	y, err = Bank{Calendar: cal, Store: Store{Usable: 3600, RoundTrip: 1}}.Year(nil)
	if err != nil || y.Total.UnservedTime != 0 || y.Total.LeastStored != 3600 {
		t.Errorf("%+v, %v", y, err)
	}
	// No store at all: what the sun does not give at once is unserved.
	y, err = steady(cal, []float64{50, 100, 200}, 100, 0, 0.9).Year(nil)
	if err != nil || y.Total.UnservedTime != 3600 || !near(y.Total.Unserved, 50*3600, 1e-12) || !near(y.Total.Curtailed, 100*3600, 1e-12) {
		t.Errorf("%+v, %v", y, err)
	}
}

// The coarse balance and the account agree on what they share: yield and load,
// month by month, from their own calls.
func TestYearAgreesWithItsParts(t *testing.T) {
	bank := system(calendar(t, 3600), 11)
	y, err := bank.Year(nil)
	if err != nil {
		t.Fatal(err)
	}
	load, err := LoadPerDay(bank.Loads)
	if err != nil {
		t.Fatal(err)
	}
	var yield [12]float64
	var clippedTime float64
	for _, charger := range bank.Chargers {
		c, err := Clip(bank.Calendar, charger, 2500, 1200)
		if err != nil {
			t.Fatal(err)
		}
		for m, joules := range c.Yields() {
			yield[m] += joules
		}
		clippedTime = max(clippedTime, c.Year.Time)
	}
	for m := range y.Months {
		days := float64(bank.Calendar.DaysIn(m + 1))
		if !near(y.Months[m].Load, load[m]*days, 1e-9) || !near(y.Months[m].Yield, yield[m], 1e-9) {
			t.Errorf("month %d: %v and %v J, from the parts %v and %v J", m+1, y.Months[m].Load, y.Months[m].Yield, load[m]*days, yield[m])
		}
		yield[m] += y.Months[m].Other
	}
	if y.Total.ClippedTime < clippedTime {
		t.Errorf("clipped for %v s, one charger alone for %v s", y.Total.ClippedTime, clippedTime)
	}
	want, err := MonthlyBalance(bank.Calendar.PerDay(yield, y.Steps), load, bank.Store.RoundTrip)
	if err != nil {
		t.Fatal(err)
	}
	got, err := y.Balance(bank.Store.RoundTrip)
	if err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(want, got, cmpopts.EquateApprox(1e-9, 0)); d != "" {
		t.Errorf("-parts +year\n%s", d)
	}
	if got.Worst != 12 && got.Worst != 1 {
		t.Errorf("the worst month of a northern year is %d", got.Worst)
	}
	short := bank
	short.Chargers, short.Others = nil, [][]float64{make([]float64, 100)}
	if y, err = short.Year(nil); err != nil {
		t.Fatal(err)
	}
	_, err = y.Balance(0.9)
	refused(t, "balance of part of a year", err)
}

// Two banks that fail in different hours fail together in both.
func TestUnservedTogether(t *testing.T) {
	cal := Calendar{StepsPerDay: 24}
	year := func(power ...float64) *Year {
		y, err := steady(cal, power, 100, 0, 1).Year(nil)
		if err != nil {
			t.Fatal(err)
		}
		return y
	}
	a, b := year(0, 100, 100, 0), year(100, 0, 100, 0)
	if got, err := UnservedTogether(a, b); err != nil || got != 3*3600 {
		t.Errorf("%v s, %v", got, err)
	}
	if got, err := UnservedTogether(a); err != nil || got != a.Total.UnservedTime {
		t.Errorf("%v s, %v", got, err)
	}
	if got, err := UnservedTogether(); err != nil || got != 0 {
		t.Errorf("%v s, %v", got, err)
	}
	_, err := UnservedTogether(a, year(0))
	refused(t, "unlike years", err)
}
