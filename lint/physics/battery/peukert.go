package battery

import (
	"math"

	"stringline/lint/physics"
)

// Rated is a capacity together with the time of discharge it is stated for. The
// two belong together: 100 Ah at the 20 h rate is another battery than 100 Ah at
// the 5 h rate.
type Rated struct {
	Capacity float64 // A s, above 0
	Time     float64 // s: 20 h is 72000; 1 h to 1000 h
}

// Current gives the current in A at which the capacity is stated.
func (r Rated) Current() float64 { return r.Capacity / r.Time }

func (r Rated) check(doing string) error {
	return physics.Check(doing,
		physics.Input{Name: "capacity", Value: r.Capacity, Min: 1, Max: 1e15, Unit: "A s"},
		physics.Input{Name: "time of the capacity's rate", Value: r.Time, Min: 3600, Max: 3.6e6, Unit: "s"})
}

func exponentInput(exponent float64) physics.Input {
	return physics.Input{Name: "Peukert exponent", Value: exponent, Min: 1, Max: 2}
}

// DischargeTime gives how long in s a full battery holds a steady current in A,
// after Peukert (1897) in the hour-rate form: t = H (C / (I H))^k, with C the
// capacity at the H-hour rate. exponent is k, 1 to 2 (lead 1.05 to 1.4, common
// practice); it is the maker's and is never assumed.
//
// The older form t = C' / I^k takes the capacity C' at 1 A. That is another
// number than a rated capacity, and this package offers no way to it.
//
// The formula is for steady currents near the rate, at 25 degC. Well below the
// rated current it promises more than the battery has: see [Rated.CapacityAt].
func (r Rated) DischargeTime(current, exponent float64) (float64, error) {
	const doing = "time of discharge"
	if err := r.check(doing); err != nil {
		return 0, err
	}
	if err := physics.Check(doing,
		physics.Input{Name: "current", Value: current, Min: 0, Max: 1e9, Unit: "A"}, exponentInput(exponent)); err != nil {
		return 0, err
	}
	if current < 1e-6 {
		return 0, physics.Refuse(doing, "the current is zero")
	}
	return r.Time * math.Pow(r.Capacity/(current*r.Time), exponent), nil
}

// CapacityAt gives the capacity in A s that a steady current in A can draw:
// current times [Rated.DischargeTime], and never more than the rated capacity
// (below the rated current the formula would promise more).
func (r Rated) CapacityAt(current, exponent float64) (float64, error) {
	t, err := r.DischargeTime(current, exponent)
	if err != nil {
		return 0, err
	}
	return min(r.Capacity, current*t), nil
}

// CurrentFor gives the steady current in A that empties a full battery in a
// time in s (1 s to 1000 h), the inverse of [Rated.DischargeTime].
func (r Rated) CurrentFor(time, exponent float64) (float64, error) {
	const doing = "current of a discharge"
	if err := r.check(doing); err != nil {
		return 0, err
	}
	if err := physics.Check(doing,
		physics.Input{Name: "time", Value: time, Min: 1, Max: 3.6e6, Unit: "s"}, exponentInput(exponent)); err != nil {
		return 0, err
	}
	return r.Current() * math.Pow(r.Time/time, 1/exponent), nil
}
