package energy

import (
	"fmt"

	"stringline/lint/physics"
	"stringline/lint/physics/converter"
)

// Array is the power that one array, or all arrays on one input together, can
// give.
type Array struct {
	Power  []float64 // W, mean over each step, 0 to 1e9: at the maximum power point; with PWM at the bank's voltage
	Losses float64   // share that soiling, wiring and aging take off first, 0 to below 1
}

// Charger is a charge controller with its arrays, over the steps of a calendar.
type Charger struct {
	Arrays     []Array
	Efficiency float64 // share, above 0 and at most 1

	// PWM says that the controller only switches: the arrays work at the bank's
	// voltage, and it cannot clip. The fields below are then not read.
	PWM bool

	Limit       converter.Limit // of the output current
	BulkVoltage float64         // V, of the bank while it takes most of its charge (an assumption: battery.BulkVoltagePerCell)
	// Air is the outside air in K: one value a step, or a single one for all. It
	// may be empty where Limit does not derate.
	Air     []float64
	AirRise float64 // K, air around the controller above Air, 0 or more: converter.AirRise
}

func (c *Charger) check(doing string, n int) error {
	for i, a := range c.Arrays {
		name := fmt.Sprintf("power of array %d", i+1)
		if err := checkSeries(doing, name, a.Power, n, 0, mostPower, "W"); err != nil {
			return err
		}
		if err := physics.Check(doing, physics.Input{Name: fmt.Sprintf("losses of array %d", i+1), Value: a.Losses, Min: 0, Max: 0.99}); err != nil {
			return err
		}
	}
	if err := physics.Check(doing, physics.Input{Name: "efficiency of the charger", Value: c.Efficiency, Min: 0.001, Max: 1}); err != nil {
		return err
	}
	if c.PWM {
		return nil
	}
	if err := physics.Check(doing,
		physics.Input{Name: "bulk voltage", Value: c.BulkVoltage, Min: 0.1, Max: 1e4, Unit: "V"},
		physics.Input{Name: "rise of the air around the charger", Value: c.AirRise, Min: 0, Max: 100, Unit: "K"}); err != nil {
		return err
	}
	if err := c.Limit.Check(); err != nil {
		return err
	}
	switch {
	case len(c.Air) == 0 && c.Limit.Derates():
		return physics.Refuse(doing, "the controller derates and no air temperature is given")
	case len(c.Air) > 1:
		return checkSeries(doing, "air temperature", c.Air, n, coldest, hottest, "K")
	}
	return checkSeries(doing, "air temperature", c.Air, len(c.Air), coldest, hottest, "K")
}

// array gives what the arrays give in step i, W, losses off.
func (c *Charger) array(i int) (watts float64) {
	for k := range c.Arrays {
		watts += c.Arrays[k].Power[i] * (1 - c.Arrays[k].Losses)
	}
	return watts
}

// most gives the largest output in W in step i: limit(T) bulk voltage.
func (c *Charger) most(i int) float64 {
	air := 0.0
	switch {
	case len(c.Air) > 1:
		air = c.Air[i]
	case len(c.Air) == 1:
		air = c.Air[0]
	}
	return c.Limit.At(air+c.AirRise) * c.BulkVoltage
}

// output gives what reaches the bank's terminals in W of a potential in W.
func (c *Charger) output(potential float64, i int) float64 {
	if c.PWM {
		return potential
	}
	return min(potential, c.most(i))
}
