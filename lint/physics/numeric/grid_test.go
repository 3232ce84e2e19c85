package numeric

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"
)

// A cubic in each variable is given exactly: the definition of the method.
func TestGridGivesCubics(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		one := func(name string) float64 { return rapid.Float64Range(-3, 3).Draw(t, name) }
		a, b, c, d, e := one("a"), one("b"), one("c"), one("d"), one("e")
		f := func(x, y float64) float64 { return (a + b*x + c*x*x + d*x*x*x) * (1 + e*y*y*y) }
		x, y := Axis{Min: -1, Max: 2, Nodes: rapid.IntRange(4, 9).Draw(t, "nodes")}, Axis{Min: 3, Max: 4, Nodes: 5}
		g, err := NewGrid(x, y, func(x, y float64) (float64, error) { return f(x, y), nil })
		if err != nil {
			t.Fatal(err)
		}
		atX, atY := rapid.Float64Range(-1, 2).Draw(t, "x"), rapid.Float64Range(3, 4).Draw(t, "y")
		if got, want := g.At(atX, atY), f(atX, atY); math.Abs(got-want) > 1e-10*math.Max(1, math.Abs(want)) {
			t.Fatalf("at (%v, %v): %v, want %v", atX, atY, got, want)
		}
		if got, want := g.At(-9, 9), f(-1, 4); math.Abs(got-want) > 1e-10*math.Max(1, math.Abs(want)) {
			t.Fatalf("outside: %v, at the edge %v", got, want)
		}
	})
}

// Halving the spacing cuts the error of exp by nearly 16.
func TestGridOrder(t *testing.T) {
	worst := func(nodes int) float64 {
		g, err := NewGrid(Axis{Max: 2, Nodes: nodes}, Axis{Max: 1, Nodes: 4}, func(x, _ float64) (float64, error) { return math.Exp(x), nil })
		if err != nil {
			t.Fatal(err)
		}
		most := 0.0
		for k := range 1000 {
			x := 2 * float64(k) / 1000
			most = math.Max(most, math.Abs(g.At(x, 0.5)-math.Exp(x)))
		}
		return most
	}
	if ratio := worst(9) / worst(17); ratio < 12 || ratio > 20 {
		t.Errorf("the error falls by %v", ratio)
	}
}

func TestGridRefuses(t *testing.T) {
	good := Axis{Max: 1, Nodes: 4}
	zero := func(x, y float64) (float64, error) { return 0, nil }
	for name, axis := range map[string]Axis{"backward": {Min: 1, Nodes: 4}, "too few": {Max: 1, Nodes: 3}, "endless": {Max: math.Inf(1), Nodes: 4}, "no number": {Max: math.NaN(), Nodes: 4}} {
		if _, err := NewGrid(axis, good, zero); err == nil {
			t.Errorf("%s: taken as x", name)
		}
		if _, err := NewGrid(good, axis, zero); err == nil {
			t.Errorf("%s: taken as y", name)
		}
	}
	if _, err := NewGrid(good, good, func(x, y float64) (float64, error) { return math.Log(x - 1), nil }); err == nil {
		t.Error("a function without values is tabulated")
	}
	own := errors.New("own")
	if _, err := NewGrid(good, good, func(x, y float64) (float64, error) { return 0, own }); !errors.Is(err, own) {
		t.Errorf("the function's error is lost: %v", err)
	}
	// What is no number has no place on the grid, and must not panic.
	g, err := NewGrid(good, good, zero)
	if err != nil {
		t.Fatal(err)
	}
	g.At(math.NaN(), math.NaN())
}

// An exponential falls by one step of Newton's however far the root is, and its
// slope leaves float64: neither must look like an arrival.
func TestRootNewtonDownAnExponential(t *testing.T) {
	calls := 0
	f := func(x float64) (float64, float64) {
		calls++
		e := math.Exp(x / 0.02)
		return 3 - e, -e / 0.02
	}
	x, err := RootNewton(f, 0, 60, 14.17, 0, false) // e^705: the value is finite, the slope is not
	if want := 0.02 * math.Log(3); err != nil || math.Abs(x-want) > 1e-12 {
		t.Errorf("%v, %v; want %v", x, err, want)
	}
	if calls > 100 {
		t.Errorf("%d calls", calls)
	}
}
