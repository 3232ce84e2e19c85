package battery

import (
	"math"

	"stringline/lint/physics"
)

// Acceptance says how fast a bank takes charge: Most until only Band is missing
// to full, then less in proportion to what is missing. So the last part is an
// exponential approach, as the current of the absorption stage at constant
// voltage shows it (common practice; a simple model: neither the rate, the
// temperature nor the age moves where the taper begins).
//
// The two numbers go together as A and A s, or as W and J.
type Acceptance struct {
	Most float64 // A or W at the terminals, above 0
	Band float64 // A s or J in store, 0 or more: how much is missing where the taper begins; 0: no taper
}

// Check refuses an acceptance that is none.
func (a Acceptance) Check() error {
	const doing = "acceptance of a bank"
	if err := physics.Check(doing,
		physics.Input{Name: "most it takes", Value: a.Most, Min: 0, Max: 1e12},
		physics.Input{Name: "band of the taper", Value: a.Band, Min: 0, Max: 1e18}); err != nil {
		return err
	}
	if a.Most < 1e-6 {
		return physics.Refuse(doing, "the bank takes nothing")
	}
	return nil
}

// Take gives how much (A s or J, at the terminals) a bank takes from a steady
// supply (A or W) in a duration in s. missing is what lacks to full at the start
// (A s or J, in store), efficiency the share of what is taken that gets into
// store (above 0, at most 1). It is the exact solution of
//
//	d missing / dt = -efficiency min(supply, Most min(1, missing / Band))
//
// so that short steps and long ones agree. It is for inner loops and checks
// nothing: [Acceptance.Check] does so once.
func (a Acceptance) Take(missing, supply, efficiency, duration float64) float64 {
	rate := min(supply, a.Most)
	if rate <= 0 || missing <= 0 || duration <= 0 {
		return 0
	}
	taper := a.Band * (rate / a.Most) // from here on the bank takes less than is offered
	taken := 0.0
	if missing > taper {
		steady := (missing - taper) / (efficiency * rate)
		if steady >= duration {
			return rate * duration
		}
		taken = (missing - taper) / efficiency
		missing, duration = taper, duration-steady
	}
	if a.Band > 0 {
		// Expm1 keeps the digits of short steps.
		taken -= missing * math.Expm1(-efficiency*a.Most*duration/a.Band) / efficiency
	}
	return taken
}

// TaperFrom gives the state of charge (0 to 1) from which a chemistry at
// everyday rates takes less and less: lead 0.80, iron phosphate 0.95, nickel
// manganese cobalt and sodium ion 0.90 (common practice, from memory). It is an
// assumption for estimates of time, never a limit.
func TaperFrom(chemistry string) (float64, error) {
	switch {
	case IsLead(chemistry):
		return 0.80, nil
	case chemistry == "lifepo4":
		return 0.95, nil
	case chemistry == "nmc", chemistry == "sodium_ion":
		return 0.90, nil
	}
	return 0, physics.Refuse("charge acceptance", "no figure for chemistry %q", chemistry)
}

// TailRate gives the current at which a bank counts as full, as a share of its
// capacity an hour: lead 0.02, lithium and sodium ion 0.05 (common practice,
// from memory). It is an assumption for estimates of time.
func TailRate(chemistry string) (float64, error) {
	switch {
	case IsLead(chemistry):
		return 0.02, nil
	case chemistry == "lifepo4", chemistry == "nmc", chemistry == "sodium_ion":
		return 0.05, nil
	}
	return 0, physics.Refuse("tail current", "no figure for chemistry %q", chemistry)
}

// Charge describes one charge of a bank at a steady current.
type Charge struct {
	Current    float64 // A, above 0: what chargers and sources give and the bank accepts
	Capacity   float64 // A s, above 0
	From       float64 // state of charge at the start, 0 to 1
	TaperFrom  float64 // state of charge at which the current begins to fall, 0 to 1: [TaperFrom]
	Tail       float64 // A, at which the bank counts as full: [TailRate] times capacity in A h
	Efficiency float64 // of charge (A s in store for A s given), above 0 and at most 1; lead about 0.85 to 0.95, lithium 0.99 (common practice)
}

// Stages gives the time in s of the stage at full current (bulk) and of that at
// falling current (absorption). The model is that of [Acceptance] with Most the
// charge current. It refuses a tail current that is not below the charge
// current: the end of such a charge cannot be told.
func (c Charge) Stages() (bulk, absorption float64, err error) {
	const doing = "time of a charge"
	if err := physics.Check(doing,
		physics.Input{Name: "current", Value: c.Current, Min: 0, Max: 1e9, Unit: "A"},
		physics.Input{Name: "capacity", Value: c.Capacity, Min: 1, Max: 1e15, Unit: "A s"},
		physics.Input{Name: "state of charge at the start", Value: c.From, Min: 0, Max: 1},
		physics.Input{Name: "state of charge where the current falls", Value: c.TaperFrom, Min: 0, Max: 1},
		physics.Input{Name: "tail current", Value: c.Tail, Min: 0, Max: 1e9, Unit: "A"},
		physics.Input{Name: "efficiency of charge", Value: c.Efficiency, Min: 0.001, Max: 1}); err != nil {
		return 0, 0, err
	}
	if c.Current < 1e-6 {
		return 0, 0, physics.Refuse(doing, "the current is zero")
	}
	missing, band := (1-c.From)*c.Capacity, (1-c.TaperFrom)*c.Capacity
	if missing > band {
		bulk = (missing - band) / (c.Efficiency * c.Current)
		missing = band
	}
	if band == 0 {
		return bulk, 0, nil // no taper: full at once
	}
	if c.Tail < 1e-9*c.Current || c.Tail >= c.Current {
		return 0, 0, physics.Refuse(doing, "the tail current of %.6g A is not between zero and the charge current of %.6g A", c.Tail, c.Current)
	}
	if end := band * (c.Tail / c.Current); missing > end {
		absorption = band / (c.Efficiency * c.Current) * math.Log(missing/end)
	}
	return bulk, absorption, nil
}

// Time gives the two stages together, in s.
func (c Charge) Time() (float64, error) {
	bulk, absorption, err := c.Stages()
	return bulk + absorption, err
}
