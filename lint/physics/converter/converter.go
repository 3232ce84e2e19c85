// Package converter holds the power electronics between array, bank and loads:
// efficiency and idle draw of converters and inverters, and the current limit of
// a charge controller.
//
// A converter is one fixed efficiency and one fixed idle draw (common practice;
// a data sheet seldom gives more). Real ones are less efficient near no load:
// the idle draw carries that part.
package converter

import (
	"stringline/lint/physics"
)

// The ranges that the formulas take. An efficiency below a tenth of a percent
// is a slip of the unit.
const (
	leastEfficiency = 0.001
	mostPower       = 1e9
	mostVoltage     = 1e6
	mostCurrent     = 1e7
	coldest         = 173.15 // K
	hottest         = 423.15 // K
)

func efficiencyInput(efficiency float64) physics.Input {
	return physics.Input{Name: "efficiency", Value: efficiency, Min: leastEfficiency, Max: 1}
}

// InputPower gives the power in W that a converter or an inverter takes to give
// output in W: output / efficiency + idle. efficiency is a share above 0 and at
// most 1, idle is in W and 0 or more.
func InputPower(output, efficiency, idle float64) (float64, error) {
	if err := physics.Check("input power of a converter",
		physics.Input{Name: "output power", Value: output, Min: 0, Max: mostPower, Unit: "W"},
		efficiencyInput(efficiency),
		physics.Input{Name: "idle draw", Value: idle, Min: 0, Max: mostPower, Unit: "W"}); err != nil {
		return 0, err
	}
	return output/efficiency + idle, nil
}

// InputCurrent gives the current in A that a converter or an inverter takes at
// its input voltage in V to give output in W: output / (voltage efficiency). The
// idle draw is not in it, as in every sizing of conductors by rated power.
func InputCurrent(output, voltage, efficiency float64) (float64, error) {
	const doing = "input current of a converter"
	if err := physics.Check(doing,
		physics.Input{Name: "output power", Value: output, Min: 0, Max: mostPower, Unit: "W"},
		physics.Input{Name: "input voltage", Value: voltage, Min: 0, Max: mostVoltage, Unit: "V"},
		efficiencyInput(efficiency)); err != nil {
		return 0, err
	}
	if voltage < 1e-3 {
		return 0, physics.Refuse(doing, "the input voltage is zero")
	}
	return output / (voltage * efficiency), nil
}

// Chain gives the efficiency of converters one after the other, the product of
// theirs; 1 where there is none.
func Chain(efficiencies ...float64) (float64, error) {
	product := 1.0
	for _, e := range efficiencies {
		if err := physics.Check("efficiency of a chain", efficiencyInput(e)); err != nil {
			return 0, err
		}
		product *= e
	}
	return product, nil
}

// Limit is what bounds the output current of a charge controller.
type Limit struct {
	Setting     float64 // A, programmed; give the rating where nothing is programmed
	Rating      float64 // A, of the data sheet, up to FullPowerTo
	Derate      float64 // 1/K, share of the rating lost with each kelvin above FullPowerTo, 0 or more
	FullPowerTo float64 // K, hottest air at which the rating holds; not read where Derate is 0
}

// Check refuses a limit that is none: a current below zero or above 1e7 A, a
// derating outside 0 to 1 for a kelvin, a temperature outside 173.15 to 423.15 K.
func (l Limit) Check() error {
	const doing = "current limit of a controller"
	if err := physics.Check(doing,
		physics.Input{Name: "setting", Value: l.Setting, Min: 0, Max: mostCurrent, Unit: "A"},
		physics.Input{Name: "rating", Value: l.Rating, Min: 0, Max: mostCurrent, Unit: "A"},
		physics.Input{Name: "derating", Value: l.Derate, Min: 0, Max: 1, Unit: "1/K"}); err != nil {
		return err
	}
	if l.Derate == 0 {
		return nil
	}
	return physics.Check(doing, physics.Input{Name: "full power up to", Value: l.FullPowerTo, Min: coldest, Max: hottest, Unit: "K"})
}

// Derates tells whether the limit depends on the temperature.
func (l Limit) Derates() bool { return l.Derate > 0 }

// At gives the limit in A at a temperature around the controller in K:
// min(setting, rating (1 - derate max(0, T - full_power_to))), never below 0.
// The derating is a straight line, as data sheets state it (common practice).
// It is for inner loops: it checks nothing, [Limit.Check] does so once.
func (l Limit) At(temperature float64) float64 {
	current := l.Rating
	if l.Derate > 0 && temperature > l.FullPowerTo {
		current = max(0, current*(1-l.Derate*(temperature-l.FullPowerTo)))
	}
	return min(l.Setting, current)
}

// Current is [Limit.At] with everything checked, for a single figure. The
// temperature in K is not read where nothing derates.
func (l Limit) Current(temperature float64) (float64, error) {
	if err := l.Check(); err != nil {
		return 0, err
	}
	if l.Derates() {
		if err := physics.Check("current limit of a controller",
			physics.Input{Name: "temperature", Value: temperature, Min: coldest, Max: hottest, Unit: "K"}); err != nil {
			return 0, err
		}
	}
	return l.At(temperature), nil
}

// AirRise gives by how many K the air around a controller is above the air
// outside: the controller's hottest less the site's, both in K, and never below
// 0 (a room that keeps cool is not credited in other hours).
func AirRise(controllerHottest, siteHottest float64) (float64, error) {
	if err := physics.Check("air around a controller",
		physics.Input{Name: "hottest air around the controller", Value: controllerHottest, Min: coldest, Max: hottest, Unit: "K"},
		physics.Input{Name: "hottest air of the site", Value: siteHottest, Min: coldest, Max: hottest, Unit: "K"}); err != nil {
		return 0, err
	}
	return max(0, controllerHottest-siteHottest), nil
}
