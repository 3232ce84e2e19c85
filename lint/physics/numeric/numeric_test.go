package numeric

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// LambertExp solves w e^w = e^x: held to the defining equation in the form w + ln
// w = x, and to values of the omega constant and of W(1), W(e), W(e^100) printed
// in tables (R. M. Corless et al., Advances in Computational Mathematics 5, 1996;
// the last worked out to 40 digits from the equation).
func TestLambertExp(t *testing.T) {
	for x, want := range map[float64]float64{0: 0.5671432904097838, 1: 1, math.Log(2) + 2: 2, 100: 95.44148664557583} {
		w, _ := LambertExp(x)
		if math.Abs(w-want) > 1e-12*want {
			t.Errorf("w(e^%v) = %.16g, want %.16g", x, w, want)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.Float64Range(-700, 1e6).Draw(t, "x")
		w, logarithm := LambertExp(x)
		if !(w > 0) || math.Abs(w+logarithm-x) > 1e-12*math.Max(1, math.Abs(x)) || math.Abs(logarithm-math.Log(w)) > 1e-12*math.Max(1, math.Abs(logarithm)) {
			t.Fatalf("x %v: w %v, ln w %v", x, w, logarithm)
		}
	})
}

func TestRoots(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		root := rapid.Float64Range(-50, 50).Draw(t, "root")
		bend := rapid.Float64Range(0, 3).Draw(t, "bend")
		f := func(x float64) float64 { d := x - root; return d + bend*d*d*d }
		x, err := Root(f, -60, 60, 0)
		if err != nil || math.Abs(x-root) > 1e-12*math.Max(1, math.Abs(root)) {
			t.Fatalf("root %v found as %v, %v", root, x, err)
		}
		x, err = RootNewton(func(x float64) (float64, float64) { d := x - root; return f(x), 1 + 3*bend*d*d }, -60, 60, 0, 0, true)
		if err != nil || math.Abs(x-root) > 1e-9 {
			t.Fatalf("root %v found by Newton as %v, %v", root, x, err)
		}
	})
	if _, err := Root(func(x float64) float64 { return 1 + x*x }, -1, 1, 0); err == nil {
		t.Error("a function without a root has one")
	}
	if _, err := Root(func(x float64) float64 { return math.NaN() }, -1, 1, 0); err == nil {
		t.Error("a function without values has a root")
	}
	if _, err := RootNewton(func(x float64) (float64, float64) { return x, 1 }, 1, math.Inf(1), 2, 0, true); err == nil {
		t.Error("an endless bracket is searched")
	}
}
