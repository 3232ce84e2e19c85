package battery

import (
	"math"
	"testing"
)

// Common practice: 0.05 V for a lithium battery of 12 V, so 0.1 V at 24 V and
// 0.2 V at 48 V.
func TestJoiningSpread(t *testing.T) {
	for nominal, want := range map[float64]float64{12.8: 0.05, 25.6: 0.1, 51.2: 0.2, 0: 0} {
		if got, err := JoiningSpread(nominal); err != nil || math.Abs(got-want) > 1e-12 {
			t.Errorf("%v V: %v V, %v", nominal, got, err)
		}
	}
	for _, bad := range []float64{-1, math.NaN(), math.Inf(1)} {
		if _, err := JoiningSpread(bad); err == nil {
			t.Errorf("%v V is taken", bad)
		}
	}
}
