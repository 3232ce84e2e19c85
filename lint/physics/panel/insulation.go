package panel

import "stringline/lint/physics"

// InsulationTest gives the voltage in V that the insulation of an array is tested
// with, and the least resistance to ground in ohm, by 1.25 times its open-circuit
// voltage at standard conditions, in V: below 120 V 250 V and 0.5 Mohm, to 500 V
// 500 V and 1 Mohm, to 1000 V 1000 V and 1 Mohm, above 1500 V and 1 Mohm.
//
// The standard's rows read "< 120", "120 to 500", "500 to 1000", "> 1000": the last
// begins above 1000 V, so exactly 1000 V is still of the row before, and exactly
// 120 V is not of the first. Exactly 500 V stands in two rows; it is taken as 1000 V
// is, for the row that ends there. A voltage within a billionth of a boundary counts
// as on it, so that a sum of panels' voltages does not hang on its last digit.
//
// Source: IEC 62446-1, insulation resistance of arrays of less than 10 kW;
// transcribed in part, the resistances from memory.
func InsulationTest(openCircuit float64) (voltage, least float64, err error) {
	if err := physics.Check("insulation test of an array",
		physics.Input{Name: "open-circuit voltage", Value: openCircuit, Min: 0, Max: 1e4, Unit: "V"}); err != nil {
		return 0, 0, err
	}
	const slack = 1e-9
	switch v := 1.25 * openCircuit; {
	case v < 120*(1-slack):
		return 250, 0.5e6, nil
	case v <= 500*(1+slack):
		return 500, 1e6, nil
	case v <= 1000*(1+slack):
		return 1000, 1e6, nil
	}
	return 1500, 1e6, nil
}
