package panel

import "testing"

// Steps of IEC 62446-1 by 1.25 x Voc: transcribed in part, resistances from
// memory. 96 V, 400 V and 800 V open circuit come to 120, 500 and 1000 V.
func TestInsulationTest(t *testing.T) {
	for _, c := range []struct{ open, voltage, least float64 }{
		{0, 250, 0.5e6}, {95.99, 250, 0.5e6}, {96, 500, 1e6}, {400, 500, 1e6}, {400.01, 1000, 1e6}, {800, 1000, 1e6}, {800.01, 1500, 1e6},
		{96 - 1e-12, 500, 1e6}, {400 + 1e-12, 500, 1e6}, {800 + 1e-12, 1000, 1e6}, {800.001, 1500, 1e6}, {95.999, 250, 0.5e6}, {400.001, 1000, 1e6},
	} {
		if voltage, least, err := InsulationTest(c.open); err != nil || voltage != c.voltage || least != c.least {
			t.Errorf("%v V: %v V, %v ohm, %v", c.open, voltage, least, err)
		}
	}
	if _, _, err := InsulationTest(-1); err == nil {
		t.Error("a negative voltage is taken")
	}
}
