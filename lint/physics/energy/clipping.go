package energy

import (
	"math"

	"stringline/lint/physics"
)

// Clipped sums what a controller makes of its array over a time.
type Clipped struct {
	Potential   float64 // J at the bank's terminals if nothing were clipped: efficiency times power, losses off
	Out         float64 // J at the bank's terminals
	AtFullPower float64 // J, Out of the same array scaled down to exactly full power; Out itself where it is no larger
	Time        float64 // s in which something is clipped
}

// Share gives the share of the energy that is clipped, 1 - Out / Potential; 0
// where there is no energy to clip.
func (c Clipped) Share() float64 {
	if c.Potential <= 0 {
		return 0
	}
	return max(0, 1-c.Out/c.Potential)
}

// Gain gives the share that the array yields more than one scaled to exactly
// full power, Out / AtFullPower - 1; 0 for an array that is no larger, or where
// neither yields.
func (c Clipped) Gain() float64 {
	if c.AtFullPower <= 0 {
		return 0
	}
	return max(0, c.Out/c.AtFullPower-1)
}

func (c *Clipped) add(d Clipped) {
	c.Potential += d.Potential
	c.Out += d.Out
	c.AtFullPower += d.AtFullPower
	c.Time += d.Time
}

// Clipping is a charger's year.
type Clipping struct {
	Year   Clipped
	Months [12]Clipped // January first
	Steps  int         // how many the series have
}

// Yields gives Out by month, in J: what [MonthlyBalance] asks for, after
// [Calendar.PerDay].
func (c Clipping) Yields() (joules [12]float64) {
	for m := range c.Months {
		joules[m] = c.Months[m].Out
	}
	return joules
}

// Clip follows a charger step by step, the bank always accepting:
//
//	out = min(efficiency Pmp, limit(T) bulk_voltage)
//
// with Pmp the array's maximum power less its losses, and T the air around the
// controller. A step counts as clipped where the potential is above the limit,
// exactly at it not. pvPower in W is the nameplate of the charger's arrays,
// fullPower in W the nominal output to which a matched array is scaled (both
// above 0): [Clipped.Gain] compares with that array under the same sky. The
// method is the project's definition; figures at another bank voltage come from
// another call with that voltage's BulkVoltage and fullPower.
func Clip(cal Calendar, charger Charger, pvPower, fullPower float64) (Clipping, error) {
	const doing = "clipping of a charger"
	n := 0
	if len(charger.Arrays) > 0 {
		n = len(charger.Arrays[0].Power)
	}
	if err := cal.checkSteps(doing, n); err != nil {
		return Clipping{}, err
	}
	if err := charger.check(doing, n); err != nil {
		return Clipping{}, err
	}
	if err := physics.Check(doing,
		physics.Input{Name: "nameplate power", Value: pvPower, Min: 1e-3, Max: mostPower, Unit: "W"},
		physics.Input{Name: "full power", Value: fullPower, Min: 1e-3, Max: mostPower, Unit: "W"}); err != nil {
		return Clipping{}, err
	}
	scale := min(1, fullPower/pvPower) // a smaller array has no gain
	result := Clipping{Steps: n}
	step := cal.Step()
	i := 0
	for m := range result.Months {
		sum := &result.Months[m]
		for end := min(n, i+cal.DaysIn(m+1)*cal.StepsPerDay); i < end; i++ {
			potential := charger.Efficiency * charger.array(i)
			out := charger.output(potential, i)
			sum.Potential += potential * step
			sum.Out += out * step
			sum.AtFullPower += charger.output(scale*potential, i) * step
			if potential > out*(1+slack) {
				sum.Time += step
			}
		}
		result.Year.add(*sum)
	}
	return result, nil
}

// HalfSineDay gives the closed form of a day whose power is half a sine with its
// peak at ratio times the controller's limit (0 or more, at most 1e6): the share
// of the day's energy that is clipped, the share of the day's light in which
// something is, and the gain over a peak of exactly the limit (0 below it). Own
// derivation: with a = arcsin(1/ratio),
//
//	clipped = cos a - (pi/2 - a) / ratio
//	time    = 1 - 2 a / pi
//	gain    = ratio (1 - clipped) - 1
//
// It holds the simulation to account and gives a first figure before any weather
// is known.
func HalfSineDay(ratio float64) (clipped, time, gain float64, err error) {
	if err := physics.Check("clipping of a half-sine day", physics.Input{Name: "ratio of peak to limit", Value: ratio, Min: 0, Max: 1e6}); err != nil {
		return 0, 0, 0, err
	}
	if ratio <= 1 {
		return 0, 0, 0, nil
	}
	inverse := 1 / ratio
	beside := math.Acos(inverse) // pi/2 - a: the half of the clipped time as an angle
	clipped = max(0, math.Sqrt((1-inverse)*(1+inverse))-beside*inverse)
	return clipped, 2 * beside / math.Pi, max(0, ratio*(1-clipped)-1), nil
}

// Steps gives what a charger could give and what it gives in each step, in W at
// the bank's terminals: for a series that no calendar holds, a single day in
// steps of a quarter of an hour, say.
func Steps(charger Charger) (potential, out []float64, err error) {
	const doing = "power of a charger"
	n := 0
	if len(charger.Arrays) > 0 {
		n = len(charger.Arrays[0].Power)
	}
	if err := charger.check(doing, n); err != nil {
		return nil, nil, err
	}
	potential, out = make([]float64, n), make([]float64, n)
	for i := range potential {
		potential[i] = charger.Efficiency * charger.array(i)
		out[i] = charger.output(potential[i], i)
	}
	return potential, out, nil
}
