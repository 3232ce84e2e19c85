// Package panel carries a panel's data-sheet values to other temperatures and
// finds what the strings of one controller input can feed into each other.
//
// The formulas are linear in the cell temperature, with the coefficients of the
// data sheet as a share per kelvin (IEC 61215 and EN 50380 define them at
// standard test conditions). Where a data sheet gives V/K, A/K or W/K use
// [PerKelvin] first.
package panel

import (
	"math"

	"stringline/lint/physics"
)

// StandardCell is the cell temperature of standard test conditions, 25 degC in K.
const StandardCell = 298.15

// CloudEdge is the factor by which sunlight at the edge of bright clouds, and
// off snow, can exceed the standard 1000 W/m2 (IEC 62548 and NEC 690.8 both
// take 1.25).
const CloudEdge = 1.25

// Conditions at which a nominal operating cell temperature is stated (IEC
// 61215): 800 W/m2 and 20 degC of air.
const (
	nominalIrradiance = 800.0  // W/m2
	nominalAir        = 293.15 // K
	fullSun           = 1000.0 // W/m2
)

// Ranges that the formulas take.
const (
	coldestCell = 173.15 // K, -100 degC
	hottestCell = 423.15 // K, 150 degC
)

// mountings and what each adds to the nominal operating cell temperature of a
// panel in free air, in K. From memory, common practice.
var mountings = map[string]float64{"open_rack": 0, "portable": 0, "roof_standoff": 6, "roof_flush": 18}

// MountingRise gives what a mounting ("open_rack", "portable", "roof_standoff",
// "roof_flush") adds to the nominal operating cell temperature, in K. From
// memory, common practice.
func MountingRise(mounting string) (float64, error) {
	rise, ok := mountings[mounting]
	if !ok {
		return 0, physics.Refuse("temperature rise of a mounting", "no figure for %q", mounting)
	}
	return rise, nil
}

// CellHot gives the cell temperature in K in full sun: air + (noct + rise - 20
// degC) 1000/800. air and noct (or nmot) in K, rise of the mounting in K.
// Source: the definition of NOCT in IEC 61215, linear in irradiance.
func CellHot(air, noct, rise float64) (float64, error) {
	return Cell(air, noct, rise, fullSun)
}

// Cell is CellHot at an irradiance in W/m2, 0 to 2000.
func Cell(air, noct, rise, irradiance float64) (float64, error) {
	if err := physics.Check("cell temperature",
		physics.Input{Name: "air temperature", Value: air, Min: coldestCell, Max: hottestCell, Unit: "K"},
		physics.Input{Name: "nominal operating cell temperature", Value: noct, Min: nominalAir, Max: hottestCell, Unit: "K"},
		physics.Input{Name: "rise of the mounting", Value: rise, Min: 0, Max: 100, Unit: "K"},
		physics.Input{Name: "irradiance", Value: irradiance, Min: 0, Max: 2000, Unit: "W/m2"}); err != nil {
		return 0, err
	}
	return air + (noct+rise-nominalAir)*irradiance/nominalIrradiance, nil
}

// PerKelvin turns a coefficient in V/K, A/K or W/K into a share per K, by the
// panel's own value (voc, isc or pmax; positive).
func PerKelvin(coefficient, own float64) (float64, error) {
	const doing = "share per kelvin"
	if err := physics.Check(doing,
		physics.Input{Name: "coefficient", Value: coefficient, Min: -1e6, Max: 1e6, Unit: "per K"},
		physics.Input{Name: "own value", Value: own, Min: 0, Max: 1e9}); err != nil {
		return 0, err
	}
	if own < 1e-9 {
		return 0, physics.Refuse(doing, "the panel's own value is zero")
	}
	return coefficient / own, nil
}

// OpenCircuit gives the open-circuit voltage in V at a cell temperature in K:
// voc (1 + coefficient (cell - 25 degC)). voc in V at standard conditions,
// coefficient (negative) as a share per K.
func OpenCircuit(voc, coefficient, cell float64) (float64, error) {
	if err := checkTranslation("open-circuit voltage", voc, coefficient, cell); err != nil {
		return 0, err
	}
	return voc * (1 + coefficient*(cell-StandardCell)), nil
}

// ShortCircuitMax gives the largest short-circuit current in A: isc at standard
// conditions x cloudEdge x (1 + coefficient max(0, cell - 25 degC)). A cold
// cell is not credited with less current.
func ShortCircuitMax(isc, coefficient, cell, cloudEdge float64) (float64, error) {
	const doing = "largest short-circuit current"
	if err := checkTranslation(doing, isc, coefficient, cell); err != nil {
		return 0, err
	}
	if err := physics.Check(doing, physics.Input{Name: "cloud-edge factor", Value: cloudEdge, Min: 1, Max: 2}); err != nil {
		return 0, err
	}
	return isc * cloudEdge * (1 + coefficient*max(0, cell-StandardCell)), nil
}

func checkTranslation(doing string, value, coefficient, cell float64) error {
	if err := physics.Check(doing,
		physics.Input{Name: "value at standard conditions", Value: value, Min: 0, Max: 1e6},
		physics.Input{Name: "coefficient", Value: coefficient, Min: -0.1, Max: 0.1, Unit: "per K"},
		physics.Input{Name: "cell temperature", Value: cell, Min: coldestCell, Max: hottestCell, Unit: "K"}); err != nil {
		return err
	}
	if 1+coefficient*(cell-StandardCell) < 0 {
		return physics.Refuse(doing, "the coefficient leaves nothing at this temperature")
	}
	return nil
}

// FaultCurrents gives, for each string of one controller input, the current in
// A that all others and the controller can feed into it when it is shorted: the
// sum of the others' short-circuit currents and the controller's backfeed. No
// code factor is inside. Unlike strings count one by one.
func FaultCurrents(shortCircuit []float64, backfeed float64) ([]float64, error) {
	const doing = "fault current of a string"
	inputs := []physics.Input{{Name: "backfeed", Value: backfeed, Min: 0, Max: 1e6, Unit: "A"}}
	for _, isc := range shortCircuit {
		inputs = append(inputs, physics.Input{Name: "short-circuit current", Value: isc, Min: 0, Max: 1e6, Unit: "A"})
	}
	if err := physics.Check(doing, inputs...); err != nil {
		return nil, err
	}
	faults := make([]float64, len(shortCircuit))
	for i := range shortCircuit {
		faults[i] = backfeed
		// Summed anew for each string: subtracting its own from a total would
		// leave a rounding error that differs from string to string.
		for j, isc := range shortCircuit {
			if j != i {
				faults[i] += isc
			}
		}
	}
	return faults, nil
}

// FuseNeeded tells whether a string needs a fuse of its own: what can be fed
// into it (times a code's factor, 1 where there is none) exceeds its panels'
// largest series fuse. Equal is no excess; the comparison has a relative slack
// of 1e-9. All currents in A.
func FuseNeeded(fault, factor, seriesFuseMax float64) (bool, error) {
	if err := physics.Check("need of a string fuse",
		physics.Input{Name: "fault current", Value: fault, Min: 0, Max: 1e6, Unit: "A"},
		physics.Input{Name: "factor", Value: factor, Min: 1, Max: 2},
		physics.Input{Name: "largest series fuse", Value: seriesFuseMax, Min: 0, Max: 1e6, Unit: "A"}); err != nil {
		return false, err
	}
	is := fault * factor
	return is-seriesFuseMax > 1e-9*math.Max(is, seriesFuseMax), nil
}
