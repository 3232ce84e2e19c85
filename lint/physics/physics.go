// Package physics holds what its sub-packages share: how a formula refuses.
//
// The packages below it take numbers in SI units and give numbers in SI units
// back. They know no design, no file and no rule. Each function names its
// formula's source and the range in which it holds; outside it refuses with a
// *[Refusal] and never extrapolates. No input makes one panic, and none gives a
// NaN or an infinity without an error beside it.
package physics

import (
	"fmt"
	"math"
)

// Refusal is the error of a formula that does not hold for what it was given.
type Refusal struct {
	Doing string // what was to be computed: "resistance of a conductor"
	Cause string // why it cannot be: "no row for 5 mm2 in IEC 60228 class 2"
}

// Error gives "doing: cause".
func (r *Refusal) Error() string { return r.Doing + ": " + r.Cause }

// Refuse makes a Refusal; cause and args are as for fmt.Sprintf.
func Refuse(doing, cause string, args ...any) error {
	return &Refusal{Doing: doing, Cause: fmt.Sprintf(cause, args...)}
}

// Input is one number handed to a formula, with the range in which the formula
// takes it, both ends included.
type Input struct {
	Name            string // "length"
	Value, Min, Max float64
	Unit            string // of the three numbers, for the message
}

// Check refuses the first input that is not finite or not within its range.
func Check(doing string, inputs ...Input) error {
	for _, in := range inputs {
		if math.IsNaN(in.Value) || math.IsInf(in.Value, 0) {
			return Refuse(doing, "%s is not a finite number", in.Name)
		}
		if in.Value < in.Min || in.Value > in.Max {
			unit := in.Unit
			if unit != "" {
				unit = " " + unit
			}
			return Refuse(doing, "%s is %.6g%s, outside %.6g to %.6g%s", in.Name, in.Value, unit, in.Min, in.Max, unit)
		}
	}
	return nil
}
