// Package conductor computes what a pair of conductors does to a current:
// resistance, voltage drop and loss.
//
// Use [Conductor.Resistance] for the resistance per meter of a size, then
// [LoopResistance], [VoltageDrop] and [Loss]. [Conductor.Method] says in words
// where the resistance comes from and whether that source was read or is from
// memory.
//
// Ampacity is not here: it is the codes' business and stands in their data.
package conductor

import (
	"math"

	"stringline/lint/physics"
	"stringline/schema/quantity"
)

// ReferenceTemperature is the reference temperature of the resistance tables, 20 degC in K.
const ReferenceTemperature = 293.15

// Copper after IEC 60028: annealed, 100 % of the international standard.
const (
	CopperResistivity = 0.017241e-6 // ohm m at 20 degC
	CopperCoefficient = 0.00393     // per K at 20 degC
)

// Aluminum, from memory: 61 % of the conductivity of annealed copper, 0.028264
// ohm mm2/m (rounded 0.0282 to 0.0283 in handbooks), and 0.00403 per K.
const (
	AluminumResistivity = CopperResistivity / 0.61 // ohm m at 20 degC
	AluminumCoefficient = 0.00403                  // per K at 20 degC
)

// stranding is what the lay of the strands adds to an AWG conductor's length,
// ASTM B8 (common practice, 2 %).
const stranding = 1.02

// Temperatures at which the linear correction is taken to hold, in K: -60 to
// 200 degC, the span of cable insulations.
const (
	coldest = 213.15
	hottest = 473.15
)

// Conductor is one conductor of a cable.
type Conductor struct {
	Area     float64 // m2: nominal for metric sizes, ASTM B258 for gauges
	Gauge    bool    // the size is an AWG or kcmil size, not a metric one
	Material string  // "Cu" or "Al"
	Strand   string  // "solid", "class_2" or "class_5"
	Tinned   bool
}

// GaugeArea gives the conductor's area in m2 of an AWG size by ASTM B258, d =
// 0.005 in x 92^((36-n)/39). n is 36 down to 1, then 0 for 1/0 to -3 for 4/0.
func GaugeArea(n int) (float64, error) {
	if n < -3 || n > 36 {
		return 0, physics.Refuse("area of a wire gauge", "no gauge %d; 36 to -3 (4/0)", n)
	}
	return quantity.MustLookup("AWG").ToSI(float64(n)), nil
}

// GaugeDiameter gives the diameter in m of an AWG size; see GaugeArea.
func GaugeDiameter(n int) (float64, error) {
	area, err := GaugeArea(n)
	return math.Sqrt(4 * area / math.Pi), err
}

// OfResistivity gives the resistance in ohm/m of a conductor: resistivity in
// ohm m, area in m2, both positive.
func OfResistivity(resistivity, area float64) (float64, error) {
	const doing = "resistance from resistivity"
	if err := physics.Check(doing,
		physics.Input{Name: "resistivity", Value: resistivity, Min: 1e-9, Max: 1e-5, Unit: "ohm m"},
		physics.Input{Name: "area", Value: area, Min: 1e-9, Max: 1, Unit: "m2"}); err != nil {
		return 0, err
	}
	return resistivity / area, nil
}

// AtTemperature carries a resistance from 20 degC to a conductor temperature in
// K: R = R20 (1 + coefficient (T - 20 degC)), IEC 60028. It holds from -60 to
// 200 degC.
func AtTemperature(resistance20, coefficient, temperature float64) (float64, error) {
	const doing = "resistance at a temperature"
	if err := physics.Check(doing,
		physics.Input{Name: "resistance at 20 degC", Value: resistance20, Min: 0, Max: math.MaxFloat32, Unit: "ohm"},
		physics.Input{Name: "coefficient", Value: coefficient, Min: 0, Max: 0.01, Unit: "per K"},
		physics.Input{Name: "temperature", Value: temperature, Min: coldest, Max: hottest, Unit: "K"}); err != nil {
		return 0, err
	}
	return resistance20 * (1 + coefficient*(temperature-ReferenceTemperature)), nil
}

// LoopResistance gives the resistance in ohm of both conductors of a run:
// perMeter in ohm/m of one conductor, length one way in m, perPole conductors
// in parallel in each pole (at least 1).
func LoopResistance(perMeter, length float64, perPole int) (float64, error) {
	if err := physics.Check("resistance of a run",
		physics.Input{Name: "resistance per length", Value: perMeter, Min: 0, Max: 1e3, Unit: "ohm/m"},
		physics.Input{Name: "length", Value: length, Min: 0, Max: 1e6, Unit: "m"},
		physics.Input{Name: "conductors per pole", Value: float64(perPole), Min: 1, Max: 1000}); err != nil {
		return 0, err
	}
	return 2 * perMeter * length / float64(perPole), nil
}

// VoltageDrop gives the voltage in V that a current in A loses in a resistance
// in ohm (Ohm's law).
func VoltageDrop(current, resistance float64) (float64, error) {
	if err := checkCurrent("voltage drop", current, resistance); err != nil {
		return 0, err
	}
	return current * resistance, nil
}

// Loss gives the power in W that a current in A loses in a resistance in ohm.
func Loss(current, resistance float64) (float64, error) {
	if err := checkCurrent("loss of a run", current, resistance); err != nil {
		return 0, err
	}
	return current * current * resistance, nil
}

func checkCurrent(doing string, current, resistance float64) error {
	return physics.Check(doing,
		physics.Input{Name: "current", Value: current, Min: 0, Max: 1e9, Unit: "A"},
		physics.Input{Name: "resistance", Value: resistance, Min: 0, Max: 1e9, Unit: "ohm"})
}
