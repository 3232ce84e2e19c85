package panel

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// anyInput is whatever the checks admit: single cells beside long strings, the
// dark, no shunt, no series resistance, with and without diodes of either kind.
func anyInput(t *rapid.T) *Input {
	var curves []Curve
	for range rapid.IntRange(1, 4).Draw(t, "curves") {
		five := anyCurve(t).Five()
		switch rapid.IntRange(0, 9).Draw(t, "light") {
		case 0:
			five.Photocurrent = 0
		case 1:
			five.Photocurrent = 1e-8
		}
		curves = append(curves, mustCurve(t, five))
	}
	drop := func(name string) float64 { return rapid.SampledFrom([]float64{0, 0.5}).Draw(t, name) }
	var strings []String
	for range rapid.IntRange(1, 3).Draw(t, "strings") {
		s := String{Count: rapid.IntRange(1, 3).Draw(t, "parallel"), Blocking: rapid.Bool().Draw(t, "blocking"), BlockingDrop: drop("blocking drop")}
		for range rapid.IntRange(1, 3).Draw(t, "kinds") {
			s.Modules = append(s.Modules, Module{Curve: rapid.SampledFrom(curves).Draw(t, "curve"), Count: rapid.IntRange(1, 4).Draw(t, "series"),
				Diodes: rapid.IntRange(0, 3).Draw(t, "diodes"), DiodeDrop: drop("diode drop")})
		}
		strings = append(strings, s)
	}
	return mustInput(t, strings...)
}

// Whatever the input: every figure is a number, the current falls with the
// voltage and is zero at open circuit, no place gives more than the maximum, and
// each string is at the common voltage.
func TestAnyInput(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := anyInput(t)
		best, err := in.Maximum()
		if err != nil {
			t.Fatal(err)
		}
		open, err := in.OpenCircuit()
		if err != nil {
			t.Fatal(err)
		}
		reverse, err := in.ReverseCurrent()
		if err != nil {
			t.Fatal(err)
		}
		mismatch, err := in.Mismatch()
		if err != nil {
			t.Fatal(err)
		}
		short, own := in.ShortCircuit(), in.OwnMaxima()
		for _, v := range []float64{best.Voltage, best.Current, open, reverse, mismatch, short, own} {
			if !(v >= 0) || math.IsInf(v, 0) {
				t.Fatalf("maximum %+v, open %v V, short %v A, reverse %v A, mismatch %v, own maxima %v W", best, open, short, reverse, mismatch, own)
			}
		}
		last := math.Inf(1)
		for k := range 301 {
			v := open * float64(k) / 300
			i, err := in.Current(v)
			if err != nil {
				t.Fatal(err)
			}
			if i > last*(1+1e-9)+1e-12 {
				t.Fatalf("the current rises at %v V: %v to %v A", v, last, i)
			}
			last = i
			if v*i > best.Power()*(1+1e-9)+1e-13*(1+own) {
				t.Fatalf("%v W at %v V, the maximum is %+v, %v W", v*i, v, best, best.Power())
			}
			if k%15 == 7 {
				oneVoltage(t, in, v)
			}
		}
		if math.Abs(last) > 1e-9*(1+short) {
			t.Fatalf("at open circuit %v A flow", last)
		}
	})
}

// oneVoltage holds every string's voltage at its current, worked out the other
// way round, to the common one.
func oneVoltage(t *rapid.T, in *Input, v float64) {
	for n := range in.lines {
		l, s := &in.lines[n], &in.state[n]
		resolved := !s.blocked
		for _, e := range l.elements {
			// Close to the end of a curve without a shunt the current's last
			// digits decide the voltage.
			c := &in.curves[e.curve]
			resolved = resolved && (c.shunt > 0 || math.Abs(c.total-s.current) > 1e-6*c.total)
		}
		if !resolved {
			continue
		}
		bypassed := 0
		for bypassed < len(l.elements) && s.current > l.elements[bypassed].knee {
			bypassed++
		}
		back := in.voltage(l, bypassed, s.current)
		if off := back.v - l.drop - v; math.Abs(off) > 1e-9*math.Max(1, v)+1e-14*math.Abs(s.current*back.slope) {
			t.Fatalf("string %d: %v V where %v V are common", n, back.v-l.drop, v)
		}
	}
}

// The answers do not hang on what was asked before.
func TestQuestionsLeaveNothing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		in := anyInput(t)
		first, err := in.Maximum()
		if err != nil {
			t.Fatal(err)
		}
		v := rapid.Float64Range(0, 2000).Draw(t, "voltage")
		_, _ = in.Current(v) // far beyond open circuit it is refused: that too
		again, err := in.Maximum()
		if err != nil {
			t.Fatal(err)
		}
		if math.Abs(again.Power()-first.Power()) > 1e-9*first.Power()+1e-12*in.OwnMaxima() {
			t.Fatalf("first %+v, then %+v", first, again)
		}
	})
}

// A cell in the dark beside a string of high voltage takes a current that leaves
// float64 on the way to the answer; it was once taken for an arrival.
func TestDarkCellBesideString(t *testing.T) {
	dark := mustCurve(t, Five{Saturation: 1e-5, Shunt: 5, Ideality: 0.02})
	bright := mustCurve(t, Five{Photocurrent: 2.7, Saturation: 1e-5, Series: 2, Shunt: math.Inf(1), Ideality: 5})
	in := mustInput(t, String{Count: 1, Modules: []Module{{Curve: bright, Count: 1}}},
		String{Count: 1, Modules: []Module{{Curve: dark, Count: 1, Diodes: 1}, {Curve: dark, Count: 1}}})
	open, err := in.OpenCircuit()
	if err != nil {
		t.Fatal(err)
	}
	// Two dark cells in series carry the 2.7 A: a ln(I/I0) each, less what the
	// shunts take.
	within(t, "open circuit", open, 2*0.02*math.Log((2.7-0.05)/1e-5), 1e-3)
	reverse, err := in.ReverseCurrent()
	if err != nil {
		t.Fatal(err)
	}
	within(t, "reverse current", reverse, 2.7, 1e-3)
	if best, err := in.Maximum(); err != nil || !(best.Power() > 0.3 && best.Power() < 2.7*open) {
		t.Errorf("maximum %+v, %v", best, err)
	}
}
