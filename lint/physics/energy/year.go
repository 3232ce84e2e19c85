package energy

import (
	"fmt"
	"slices"

	"stringline/lint/physics"
	"stringline/lint/physics/battery"
)

// Store is the bank as a store of energy.
type Store struct {
	Usable    float64 // J that a full bank may give, 0 or more: battery.UsableEnergy
	RoundTrip float64 // energy out over energy in, above 0 and at most 1; charged once, on what goes in
	// Acceptance bounds what goes in, in W and J; nil: the bank takes whatever
	// there is until it is full.
	Acceptance *battery.Acceptance
}

// Bank is a bank with everything that charges it and that it feeds.
type Bank struct {
	Calendar Calendar
	Chargers []Charger
	Others   [][]float64 // W at the bank's terminals, one series for each other source
	Loads    []Load      // idle draws among them: [Idle]
	Store    Store
}

// Year is the account of a bank.
type Year struct {
	Calendar Calendar
	Steps    int     // of the series
	Total    Sum     // of all steps
	Months   [12]Sum // January first; Time is 0 where the series do not reach

	unserved []uint64 // one bit a step
}

// UnservedAt tells whether some load stays unserved in step i.
func (y *Year) UnservedAt(i int) bool {
	return i >= 0 && i < y.Steps && y.unserved[i/64]>>(i%64)&1 == 1
}

// Balance gives the coarse balance of the year's months, [MonthlyBalance], with
// other sources counted as yield. It needs series of a whole year.
func (y *Year) Balance(roundTrip float64) (Balance, error) {
	if y.Steps != y.Calendar.Steps() {
		return Balance{}, physics.Refuse("monthly balance", "the series have %d steps, a year has %d", y.Steps, y.Calendar.Steps())
	}
	var yield, load [12]float64
	for m := range y.Months {
		sum := &y.Months[m]
		yield[m], load[m] = sum.Yield+sum.Other, sum.Load
	}
	return MonthlyBalance(y.Calendar.PerDay(yield, y.Steps), y.Calendar.PerDay(load, y.Steps), roundTrip)
}

// UnservedTogether gives the time in s in which any of several banks leaves a
// load unserved: the system's unserved hours. The years must have the same steps.
func UnservedTogether(years ...*Year) (float64, error) {
	if len(years) == 0 {
		return 0, nil
	}
	first := years[0]
	steps := 0
	for _, y := range years {
		if y.Calendar != first.Calendar || y.Steps != first.Steps {
			return 0, physics.Refuse("unserved hours", "the banks' years have not the same steps")
		}
	}
	for i := range first.Steps {
		if slices.ContainsFunc(years, func(y *Year) bool { return y.UnservedAt(i) }) {
			steps++
		}
	}
	return float64(steps) * first.Calendar.Step(), nil
}

// Year keeps the account of the bank step by step through the series, twice: the
// first pass starts from a full bank, the second from where the first ended, and
// the second is the one counted, so that the start does not decide.
//
// In each step sources cover the loads first and pay no round trip; what is left
// over goes into store until it is full, times the round trip; what is missing
// comes from store until it is empty, and is unserved after that. A step counts
// as unserved when more is missing than rounding explains (1e-9 of its load,
// 1e-12 of the store). The powers of inverters and converters do not bound it,
// nor does the bank's discharge current: rules judge those.
//
// visit, if not nil, sees each step of the second pass; the Step is the same one
// every time. Nothing is allocated within the passes. It refuses series of unlike
// length, values outside their ranges and loads that contradict themselves, each
// by name.
func (b Bank) Year(visit func(*Step)) (*Year, error) {
	r, err := b.prepare()
	if err != nil {
		return nil, err
	}
	y := &Year{Calendar: b.Calendar, Steps: r.n, unserved: make([]uint64, (r.n+63)/64)}
	full := r.bank.Store.Usable
	r.pass(r.pass(full, nil, nil), y, visit)
	for m := range y.Months {
		y.Total.join(&y.Months[m])
	}
	return y, nil
}

// run is a bank made ready for its passes.
type run struct {
	bank     *Bank
	n        int
	duration float64
	profiles [12][]float64
	step     Step
}

func (b *Bank) prepare() (*run, error) {
	const doing = "account of a bank"
	if err := b.Calendar.check(doing); err != nil {
		return nil, err
	}
	n := b.Calendar.Steps() // without any source a whole year
	for i := len(b.Others) - 1; i >= 0; i-- {
		n = len(b.Others[i])
	}
	for i := len(b.Chargers) - 1; i >= 0; i-- {
		if arrays := b.Chargers[i].Arrays; len(arrays) > 0 {
			n = len(arrays[0].Power)
		}
	}
	if err := b.Calendar.checkSteps(doing, n); err != nil {
		return nil, err
	}
	for i := range b.Chargers {
		if err := b.Chargers[i].check(fmt.Sprintf("%s: charger %d", doing, i+1), n); err != nil {
			return nil, err
		}
	}
	for i, power := range b.Others {
		if err := checkSeries(doing, fmt.Sprintf("power of other source %d", i+1), power, n, 0, mostPower, "W"); err != nil {
			return nil, err
		}
	}
	if err := checkLoads(doing, b.Loads); err != nil {
		return nil, err
	}
	if err := physics.Check(doing,
		physics.Input{Name: "usable energy", Value: b.Store.Usable, Min: 0, Max: 1e18, Unit: "J"},
		physics.Input{Name: "round trip", Value: b.Store.RoundTrip, Min: 0.001, Max: 1}); err != nil {
		return nil, err
	}
	if b.Store.Acceptance != nil {
		if err := b.Store.Acceptance.Check(); err != nil {
			return nil, err
		}
	}
	return &run{bank: b, n: n, duration: b.Calendar.Step(), profiles: profiles(b.Calendar, b.Loads)}, nil
}

// pass goes through all steps from a bank that holds stored, in J, and gives
// what it holds at the end. Only a pass with a year is recorded and visited.
func (r *run) pass(stored float64, y *Year, visit func(*Step)) float64 {
	t := &r.step
	i := 0
	for m := range r.profiles {
		for range r.bank.Calendar.DaysIn(m + 1) {
			for _, load := range r.profiles[m] {
				if i == r.n {
					return stored
				}
				clipped := r.sources(t, i)
				t.Load = load * r.duration
				unserved := r.store(t, stored)
				stored = t.Stored
				if y != nil {
					y.Months[m].addStep(t, r.duration, clipped, unserved)
					if unserved {
						y.unserved[i/64] |= 1 << (i % 64)
					}
					if visit != nil {
						visit(t)
					}
				}
				i++
			}
		}
	}
	return stored
}

// sources fills in what the sources give in step i and tells whether any of the
// controllers clips.
func (r *run) sources(t *Step, i int) (clipped bool) {
	*t = Step{Index: i}
	for c := range r.bank.Chargers {
		charger := &r.bank.Chargers[c]
		array := charger.array(i)
		potential := charger.Efficiency * array
		out := charger.output(potential, i)
		t.Array += array * r.duration
		t.Converted += (1 - charger.Efficiency) * array * r.duration
		t.Clipped += (potential - out) * r.duration
		t.Yield += out * r.duration
		clipped = clipped || potential > out*(1+slack)
	}
	for _, power := range r.bank.Others {
		t.Other += power[i] * r.duration
	}
	return clipped
}

// store settles a step between sources, loads and store, and tells whether a
// load stays unserved.
func (r *run) store(t *Step, stored float64) (unserved bool) {
	s := &r.bank.Store
	t.Before, t.Stored = stored, stored
	offered := t.Yield + t.Other
	t.Direct = min(offered, t.Load)
	if over := offered - t.Direct; over > 0 {
		room := s.Usable - stored
		t.Charged = over
		if s.Acceptance != nil {
			t.Charged = min(over, s.Acceptance.Take(room, over/r.duration, s.RoundTrip, r.duration))
		}
		if fill := room / s.RoundTrip; t.Charged >= fill {
			t.Charged, t.Stored = fill, s.Usable // full to the last bit
		} else {
			t.Stored = min(s.Usable, stored+s.RoundTrip*t.Charged)
		}
		t.StoreLost = (1 - s.RoundTrip) * t.Charged
		t.Curtailed = over - t.Charged
		return false
	}
	t.Discharged = min(t.Load-t.Direct, stored)
	t.Stored = stored - t.Discharged
	t.Unserved = t.Load - t.Direct - t.Discharged
	return t.Unserved > slack*t.Load+1e-12*s.Usable
}
