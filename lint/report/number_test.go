package report

import "testing"

// A gauge is shown by its name, and an area that is none in mm2. Gauge n has a
// diameter of 0.127 mm x 92^((36-n)/39) (ASTM B258, from memory): 5.978 gives
// 4.125 mm, 13.4 mm2.
func TestGaugesAreNames(t *testing.T) {
	for value, want := range map[float64]string{2: "2 AWG", 0: "1/0 AWG", -2: "3/0 AWG", 5.978: "13.4 mm2"} {
		if got := show(value, "AWG"); got != want {
			t.Errorf("%g: %s, want %s", value, got, want)
		}
	}
}
