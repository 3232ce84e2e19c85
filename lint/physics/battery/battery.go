// Package battery holds the algebra of a battery bank: its voltage class, the
// voltage at which it takes most of its charge, set-points compensated for
// temperature, charge rate and short-circuit current.
//
// What a chemistry stands (its limits per cell) is not here: the makers' data
// sheets say it, and rules hold the common practice.
package battery

import (
	"math"
	"slices"

	"stringline/lint/physics"
)

// CompensationReference is the temperature at which set-points are stated, 25
// degC in K (common practice of makers).
const CompensationReference = 298.15

// classes are the system voltages in V that settings, baselines and shares of
// voltage drop go by.
var classes = []float64{12, 24, 36, 48}

// A bank belongs to a class from 8 % below it to 10 % above it, both ends
// included: 25.6 V of iron phosphate is a 24 V system.
const (
	classBelow = 0.08
	classAbove = 0.10
	slack      = 1e-9 // relative, as in every comparison of the program
)

// SystemVoltage gives the class in V (12, 24, 36 or 48) of a bank's nominal
// voltage in V; it refuses a voltage within no class.
func SystemVoltage(nominal float64) (float64, error) {
	const doing = "system voltage"
	if err := physics.Check(doing, physics.Input{Name: "nominal voltage", Value: nominal, Min: 0, Max: 1e6, Unit: "V"}); err != nil {
		return 0, err
	}
	for _, class := range classes {
		low, high := class*(1-classBelow), class*(1+classAbove)
		if nominal >= low*(1-slack) && nominal <= high*(1+slack) {
			return class, nil
		}
	}
	return 0, physics.Refuse(doing, "%.6g V is within -8 to +10 %% of none of 12, 24, 36 and 48 V", nominal)
}

// lead names the lead chemistries.
var lead = []string{"flooded", "agm", "gel"}

// IsLead tells whether a chemistry is one of lead: "flooded", "agm", "gel".
func IsLead(chemistry string) bool { return slices.Contains(lead, chemistry) }

// BulkVoltagePerCell gives the voltage in V at which a cell takes most of its
// charge, the middle of the bulk stage (common practice): lead 2.15, iron
// phosphate 3.35, nickel manganese cobalt 3.75, sodium ion 3.15. It is an
// assumption for estimates of current and power, never a limit.
func BulkVoltagePerCell(chemistry string) (float64, error) {
	switch {
	case IsLead(chemistry):
		return 2.15, nil
	case chemistry == "lifepo4":
		return 3.35, nil
	case chemistry == "nmc":
		return 3.75, nil
	case chemistry == "sodium_ion":
		return 3.15, nil
	}
	return 0, physics.Refuse("bulk voltage of a cell", "no figure for chemistry %q", chemistry)
}

// CompensatedVoltage gives the voltage in V to which a set-point moves at a
// bank temperature in K: setting + cells coefficient (temperature - 25 degC).
// cells counts the cells in series of the whole bank, coefficient is in V/K a
// cell (lead -3 to -5 mV/K, common practice; 0 for lithium).
func CompensatedVoltage(setting float64, cells int, coefficient, temperature float64) (float64, error) {
	if err := physics.Check("compensated voltage",
		physics.Input{Name: "setting", Value: setting, Min: 0, Max: 1e6, Unit: "V"},
		physics.Input{Name: "cells in series", Value: float64(cells), Min: 1, Max: 1e5},
		physics.Input{Name: "coefficient", Value: coefficient, Min: -0.1, Max: 0.1, Unit: "V/K"},
		physics.Input{Name: "temperature", Value: temperature, Min: 173.15, Max: 423.15, Unit: "K"}); err != nil {
		return 0, err
	}
	return setting + float64(cells)*coefficient*(temperature-CompensationReference), nil
}

// ChargeRate gives the share of its capacity that a current in A fills in an
// hour: 0.1 is the trade's C/10, 10 %. capacity in A s, positive.
func ChargeRate(current, capacity float64) (float64, error) {
	const doing = "charge rate"
	if err := physics.Check(doing,
		physics.Input{Name: "current", Value: current, Min: 0, Max: 1e9, Unit: "A"},
		physics.Input{Name: "capacity", Value: capacity, Min: 0, Max: 1e15, Unit: "A s"}); err != nil {
		return 0, err
	}
	if capacity < 1e-6 {
		return 0, physics.Refuse(doing, "the capacity is zero")
	}
	return current * 3600 / capacity, nil
}

// ShortCircuit gives the current in A of a shorted bank: strings in parallel
// times what one battery gives. Batteries in series add none, and a battery
// management system is never credited with breaking it.
func ShortCircuit(parallel int, perBattery float64) (float64, error) {
	if err := physics.Check("short-circuit current of a bank",
		physics.Input{Name: "strings in parallel", Value: float64(parallel), Min: 1, Max: 1e6},
		physics.Input{Name: "short-circuit current of a battery", Value: perBattery, Min: 0, Max: 1e9, Unit: "A"}); err != nil {
		return 0, err
	}
	return float64(parallel) * perBattery, nil
}

// ShortCircuitOfResistance gives the short-circuit current in A of one battery
// from its voltage in V and internal resistance in ohm (Ohm's law; terminals
// and leads not counted).
func ShortCircuitOfResistance(voltage, resistance float64) (float64, error) {
	const doing = "short-circuit current of a battery"
	if err := physics.Check(doing,
		physics.Input{Name: "voltage", Value: voltage, Min: 0, Max: 1e6, Unit: "V"},
		physics.Input{Name: "internal resistance", Value: resistance, Min: 0, Max: 1e6, Unit: "ohm"}); err != nil {
		return 0, err
	}
	i := voltage / resistance
	if math.IsNaN(i) || i > 1e9 {
		return 0, physics.Refuse(doing, "the internal resistance is too small to be one")
	}
	return i, nil
}
