package conductor_test

import (
	"math"
	"testing"

	"stringline/lint/physics/conductor"
)

// Handbooks give 53.4 kg/km for 6 mm2 and 622 kg/km for 70 mm2 of bare copper (the
// usual tables go by 8.9 kg/dm3, from memory), and ASTM B258's 4/0 copper 640.5
// lb/kft (solid, from memory): each within 0.2 %.
func TestMass(t *testing.T) {
	gauge, err := conductor.GaugeArea(-3)
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		area, length, want float64
		material           string
		perPole            int
	}{
		{6e-6, 1000, 2 * 53.4, "Cu", 1},
		{70e-6, 1000, 2 * 623, "Cu", 1},
		{70e-6, 1000, 4 * 623, "Cu", 2},
		{gauge, 304.8, 2 * 640.5 * 0.45359237, "Cu", 1},
		{70e-6, 1000, 2 * 189.2, "Al", 1},
		{70e-6, 0, 0, "Cu", 1},
	} {
		got, err := conductor.Mass(c.area, c.length, c.perPole, c.material)
		if err != nil || math.Abs(got-c.want) > 0.002*c.want {
			t.Errorf("%g m2, %g m, %d of %s: %v kg, %v; want %v", c.area, c.length, c.perPole, c.material, got, err, c.want)
		}
	}
	for _, bad := range []struct {
		area, length float64
		n            int
		material     string
	}{{-1, 1, 1, "Cu"}, {1e-6, math.NaN(), 1, "Cu"}, {1e-6, 1, 0, "Cu"}, {1e-6, 1, 1, "Fe"}} {
		if v, err := conductor.Mass(bad.area, bad.length, bad.n, bad.material); err == nil {
			t.Errorf("%+v has a mass of %v", bad, v)
		}
	}
}
