package panel

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func mustCurve(t interface{ Fatal(...any) }, five Five) Curve {
	c, err := NewCurve(five)
	if err != nil {
		t.Fatal(err)
	}
	return c
}

func within(t *testing.T, what string, got, want, tolerance float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tolerance) {
		t.Errorf("%s: %.10g, want %.10g within %g", what, got, want, tolerance)
	}
}

// The silicon cell of T. Easwarakhanthan et al., Int. J. Solar Energy 4 (1986), 33
// degC and 1000 W/m2: measured voltages and currents, transcribed, with the five
// parameters that later work fits to them. Both ways of stating the error,
// recomputed independently.
func TestMeasuredCell(t *testing.T) {
	measured := [][2]float64{
		{-.2057, .7640}, {-.1291, .7620}, {-.0588, .7605}, {.0057, .7605}, {.0646, .7600}, {.1185, .7590}, {.1678, .7570},
		{.2132, .7570}, {.2545, .7555}, {.2924, .7540}, {.3269, .7505}, {.3585, .7465}, {.3873, .7385}, {.4137, .7280},
		{.4373, .7065}, {.4590, .6755}, {.4784, .6320}, {.4960, .5730}, {.5119, .4990}, {.5265, .4130}, {.5398, .3165},
		{.5521, .2120}, {.5633, .1035}, {.5736, -.0100}, {.5833, -.1230}, {.5900, -.2100},
	}
	const rs, rsh, photo, saturation = .036377, 53.718526, .760776, .323021e-6
	a := 1.481184 * ThermalVoltage(33+273.15)
	c := mustCurve(t, Five{Photocurrent: photo, Saturation: saturation, Series: rs, Shunt: rsh, Ideality: a})
	var implicit, solved float64
	for _, m := range measured {
		u := m[0] + m[1]*rs
		implicit += math.Pow(photo-saturation*math.Expm1(u/a)-u/rsh-m[1], 2)
		i, err := c.Current(m[0])
		if err != nil {
			t.Fatal(err)
		}
		solved += math.Pow(i-m[1], 2)
	}
	n := float64(len(measured))
	within(t, "RMSE with the measured current inside the exponential", math.Sqrt(implicit/n), 9.8602e-4, 5e-8)
	within(t, "RMSE of the solved curve", math.Sqrt(solved/n), 7.754e-4, 5e-7)
}

// The 200 W module of M. G. Villalva, J. R. Gazoli & E. R. Ruppert, IEEE Trans.
// Power Electron. 24(5) (2009), its own parameters, read.
func TestPublishedModule(t *testing.T) {
	c := mustCurve(t, Five{Photocurrent: 8.2144, Saturation: 9.8252e-8, Series: .221, Shunt: 415.405, Ideality: 1.3 * 54 * ThermalVoltage(StandardCell)})
	within(t, "maximum power", c.Maximum().Power(), 200.14, 0.01)
	within(t, "short circuit", c.ShortCircuit(), 8.21, 0.001)
	// The paper takes I0 from Voc without the shunt, which costs 0.05 % of it.
	within(t, "open circuit", c.OpenCircuit(), 32.9, 0.02)
}

// 72 cells, recomputed in 40-digit arithmetic.
func TestFortyDigits(t *testing.T) {
	c := mustCurve(t, Five{Photocurrent: 1, Saturation: 5e-10, Series: .1, Shunt: 300, Ideality: 1.01 * 72 * ThermalVoltage(StandardCell)})
	within(t, "short circuit", c.ShortCircuit(), .99966677771328, 1e-13)
	within(t, "open circuit", c.OpenCircuit(), 39.74810737986973, 1e-12)
	within(t, "maximum power", c.Maximum().Power(), 28.71481604563992, 1e-12)
}

func anyCurve(t *rapid.T) Curve {
	span := func(name string, lo, hi float64) float64 {
		return math.Exp(rapid.Float64Range(math.Log(lo), math.Log(hi)).Draw(t, name))
	}
	shunt := span("shunt", 5, 1e6)
	if rapid.Bool().Draw(t, "no shunt") {
		shunt = math.Inf(1)
	}
	series := span("series", 1e-4, 2)
	if rapid.Bool().Draw(t, "no series") {
		series = 0
	}
	return mustCurve(t, Five{Photocurrent: span("photo", 1e-3, 20), Saturation: span("saturation", 1e-14, 1e-5), Series: series, Shunt: shunt, Ideality: span("ideality", 0.02, 5)})
}

// Two ways to the same number: the Lambert W solution and bracketing, which share
// nothing but the model's equation.
func TestLambertAgainstBracketing(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anyCurve(t)
		v := rapid.Float64Range(-0.5, 1.05).Draw(t, "share of open circuit") * c.OpenCircuit()
		i, err := c.Current(v)
		other, err2 := c.CurrentBracketed(v)
		if err != nil || err2 != nil {
			t.Fatal(err, err2)
		}
		if scale := math.Max(c.Five().Photocurrent, math.Abs(i)); math.Abs(i-other) > 1e-9*scale {
			t.Fatalf("at %v V: %v A, by bracketing %v A", v, i, other)
		}
		if c.shunt == 0 && c.total-i < 1e-6*c.total {
			return // the current's last digits decide the voltage there
		}
		back, err := c.Voltage(i)
		if err != nil {
			return // a current at the very end of a curve without a shunt
		}
		two, err := c.VoltageBracketed(i)
		if err != nil {
			t.Fatal(err)
		}
		// Near the end of a curve without a shunt the voltage is as steep as one
		// likes: what rounding of the current costs is allowed on top.
		if math.Abs(back-two) > 1e-9*math.Max(1, math.Abs(two))+1e-14*math.Abs(i*c.at(i).slope) {
			t.Fatalf("at %v A: %v V, by bracketing %v V", i, back, two)
		}
	})
}

// The maximum is one: no point beside it gives more.
func TestMaximumIsOne(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := anyCurve(t)
		best := c.Maximum()
		if math.IsNaN(best.Power()) || best.Power() < 0 {
			t.Fatalf("maximum %+v", best)
		}
		open := c.OpenCircuit()
		for k := range 200 {
			v := open * float64(k) / 200
			i, err := c.Current(v)
			if err != nil {
				t.Fatal(err)
			}
			if v*i > best.Power()*(1+1e-9) {
				t.Fatalf("%v W at %v V, the maximum is %v W", v*i, v, best.Power())
			}
		}
	})
}

func TestCurveRefuses(t *testing.T) {
	good := Five{Photocurrent: 8, Saturation: 1e-9, Series: .2, Shunt: 300, Ideality: 1.5}
	for name, change := range map[string]func(*Five){
		"a photocurrent below zero": func(f *Five) { f.Photocurrent = -1 },
		"no diode":                  func(f *Five) { f.Saturation = 0 },
		"a resistance below zero":   func(f *Five) { f.Series = -.1 },
		"a short circuit inside":    func(f *Five) { f.Shunt = 0 },
		"no ideality":               func(f *Five) { f.Ideality = 0 },
		"no number":                 func(f *Five) { f.Ideality = math.NaN() },
	} {
		f := good
		change(&f)
		if _, err := NewCurve(f); err == nil {
			t.Errorf("%s is taken", name)
		}
	}
	dark := mustCurve(t, Five{Saturation: 1e-9, Series: .2, Shunt: 300, Ideality: 1.5})
	if p := dark.Maximum(); p != (Point{}) || dark.OpenCircuit() != 0 || dark.ShortCircuit() != 0 {
		t.Errorf("the dark gives %+v", p)
	}
}
