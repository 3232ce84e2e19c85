package panel

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// cell36 is a module of 36 cells with a photocurrent.
func cell36(t interface{ Fatal(...any) }, photo float64) Curve {
	return mustCurve(t, Five{Photocurrent: photo, Saturation: 5e-10, Series: .5, Shunt: 1000, Ideality: 1.1 * 36 * ThermalVoltage(StandardCell)})
}

func mustInput(t interface{ Fatal(...any) }, strings ...String) *Input {
	in, err := NewInput(strings)
	if err != nil {
		t.Fatal(err)
	}
	return in
}

func of(curves ...Curve) String {
	s := String{Count: 1}
	for _, c := range curves {
		s.Modules = append(s.Modules, Module{Curve: c, Count: 1, Diodes: 1})
	}
	return s
}

// Own derivation, recomputed: two modules of 36 cells, photocurrents 4 A and 8 A,
// in series with ideal bypass diodes, 25 degC.
func TestUnlikePair(t *testing.T) {
	in := mustInput(t, of(cell36(t, 4), cell36(t, 8)))
	all, err := in.Maxima()
	if err != nil {
		t.Fatal(err)
	}
	if len(all) != 2 {
		t.Fatalf("maxima %+v", all)
	}
	powers := []float64{all[0].Power(), all[1].Power()}
	within(t, "largest maximum", math.Max(powers[0], powers[1]), 150.5644, 5e-5)
	within(t, "second maximum", math.Min(powers[0], powers[1]), 129.7589, 5e-5)
	best, err := in.Maximum()
	if err != nil {
		t.Fatal(err)
	}
	within(t, "voltage of the largest", best.Voltage, 38.944, 5e-4)
	mismatch, err := in.Mismatch()
	if err != nil {
		t.Fatal(err)
	}
	within(t, "mismatch in percent", 100*mismatch, 24.27, 5e-3)
	within(t, "short circuit", in.ShortCircuit(), 7.996, 5e-4)
}

// Every maximum that a fine scan of the curve shows is found, and no other.
func TestMaximaAgainstScan(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var strings []String
		for range rapid.IntRange(1, 3).Draw(t, "strings") {
			s := String{Count: rapid.IntRange(1, 3).Draw(t, "parallel"), Blocking: rapid.Bool().Draw(t, "blocking")}
			for range rapid.IntRange(1, 3).Draw(t, "kinds") {
				photo := rapid.Float64Range(0.5, 12).Draw(t, "photo")
				s.Modules = append(s.Modules, Module{Curve: cell36(t, photo), Count: rapid.IntRange(1, 4).Draw(t, "series"), Diodes: 1})
			}
			strings = append(strings, s)
		}
		in := mustInput(t, strings...)
		best, err := in.Maximum()
		if err != nil {
			t.Fatal(err)
		}
		all, err := in.Maxima()
		if err != nil {
			t.Fatal(err)
		}
		open, err := in.OpenCircuit()
		if err != nil {
			t.Fatal(err)
		}
		const steps = 3000
		power := func(k int) float64 {
			v := open * float64(k) / steps
			i, err := in.Current(v)
			if err != nil {
				t.Fatal(err)
			}
			return v * i
		}
		scanned := 0
		last, here := 0.0, power(1)
		for k := 1; k < steps; k++ {
			next := power(k + 1)
			if here > best.Power()*(1+1e-9) {
				t.Fatalf("%v W at step %d, the maximum is %v W", here, k, best.Power())
			}
			if here > last && here >= next && here > 1e-6*best.Power() {
				scanned++
			}
			last, here = here, next
		}
		if scanned > len(all) {
			t.Fatalf("a scan shows %d maxima, %d were found: %+v", scanned, len(all), all)
		}
	})
}

// One voltage lies across strings in parallel: what each gives at it adds up to
// what they give together, to 1e-9.
func TestOneVoltage(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var strings []String
		for range rapid.IntRange(2, 4).Draw(t, "strings") {
			strings = append(strings, of(cell36(t, rapid.Float64Range(1, 10).Draw(t, "photo")), cell36(t, rapid.Float64Range(1, 10).Draw(t, "photo"))))
		}
		together := mustInput(t, strings...)
		v := rapid.Float64Range(0, 45).Draw(t, "voltage")
		sum := 0.0
		for _, s := range strings {
			i, err := mustInput(t, s).Current(v)
			if err != nil {
				t.Fatal(err)
			}
			sum += i
		}
		if got, _ := together.Current(v); math.Abs(got-sum) > 1e-9*math.Max(1, math.Abs(sum)) {
			t.Fatalf("%v A together, %v A one by one", got, sum)
		}
	})
}

// Like panels lose nothing to each other and drive nothing back.
func TestLikePanels(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := cell36(t, rapid.Float64Range(0.5, 12).Draw(t, "photo"))
		series, parallel := rapid.IntRange(1, 6).Draw(t, "series"), rapid.IntRange(1, 6).Draw(t, "parallel")
		in := mustInput(t, String{Count: parallel, Modules: []Module{{Curve: c, Count: series, Diodes: 3}}})
		if mismatch, err := in.Mismatch(); err != nil || mismatch > 1e-9 {
			t.Fatalf("mismatch %v, %v", mismatch, err)
		}
		if back, err := in.ReverseCurrent(); err != nil || back != 0 {
			t.Fatalf("reverse current %v, %v", back, err)
		}
	})
}

// A weaker string beside a stronger one takes current while the input is open,
// unless a diode blocks it. The balance is exact: nothing leaves the input.
func TestReverseCurrent(t *testing.T) {
	weak, strong := of(cell36(t, 8)), of(cell36(t, 8), cell36(t, 8))
	in := mustInput(t, weak, strong)
	back, err := in.ReverseCurrent()
	if err != nil {
		t.Fatal(err)
	}
	open, err := in.OpenCircuit()
	if err != nil {
		t.Fatal(err)
	}
	given, err := mustInput(t, strong).Current(open)
	if err != nil {
		t.Fatal(err)
	}
	within(t, "what flows back is what the other gives", back, given, 1e-9)
	if back < 1 {
		t.Errorf("only %v A flow into a string of half the voltage", back)
	}
	weak.Blocking = true
	if back, err := mustInput(t, weak, strong).ReverseCurrent(); err != nil || back != 0 {
		t.Errorf("a blocking diode lets %v A through, %v", back, err)
	}
}

// One more panel in series never lowers the open-circuit voltage, in any light.
func TestOneMoreInSeries(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := cell36(t, rapid.Float64Range(0.01, 12).Draw(t, "a")), cell36(t, rapid.Float64Range(0.01, 12).Draw(t, "b"))
		one, err := mustInput(t, of(a)).OpenCircuit()
		if err != nil {
			t.Fatal(err)
		}
		two, err := mustInput(t, of(a, b)).OpenCircuit()
		if err != nil || two < one {
			t.Fatalf("%v V with one more, %v V before, %v", two, one, err)
		}
	})
}

func TestInputRefuses(t *testing.T) {
	c := cell36(t, 8)
	for name, strings := range map[string][]String{
		"no string":             nil,
		"an empty string":       {{Count: 1}},
		"no module in a kind":   {{Count: 1, Modules: []Module{{Curve: c}}}},
		"no string of a kind":   {{Modules: []Module{{Curve: c, Count: 1}}}},
		"a module with no data": {{Count: 1, Modules: []Module{{Count: 1}}}},
		"a drop below zero":     {{Count: 1, Modules: []Module{{Curve: c, Count: 1, Diodes: 1, DiodeDrop: -1}}}},
	} {
		if _, err := NewInput(strings); err == nil {
			t.Errorf("%s is taken", name)
		}
	}
}

// BenchmarkExactSolve is the baseline: one exact current at a voltage of a single
// curve. BenchmarkMixedInputMaximum is the maximum of two unlike strings.
func BenchmarkExactSolve(b *testing.B) {
	c := cell36(b, 8)
	v := 0.0
	for b.Loop() {
		if v += 0.01; v > 20 {
			v = 0
		}
		_ = c.currentAt(v)
	}
}

func BenchmarkMixedInputMaximum(b *testing.B) {
	other := mustCurve(b, Five{Photocurrent: 6, Saturation: 2e-9, Series: .4, Shunt: 500, Ideality: 1.15 * 36 * ThermalVoltage(StandardCell)})
	in := mustInput(b, String{Count: 2, Modules: []Module{{Curve: cell36(b, 8), Count: 2, Diodes: 3}}}, String{Count: 1, Modules: []Module{{Curve: other, Count: 2, Diodes: 3}}})
	b.ReportAllocs()
	for b.Loop() {
		if _, err := in.Maximum(); err != nil {
			b.Fatal(err)
		}
	}
}
