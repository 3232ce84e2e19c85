package panel

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

func mustFit(t interface{ Fatal(...any) }, name string) Model {
	fit, err := FitDataSheet(sheets[name])
	if err != nil {
		t.Fatal(err)
	}
	return fit.Model
}

// unlikePair is two unlike panels in one string beside two alike in another, the
// cells of the second kind running 3 K hotter in full sun.
func unlikePair(t interface{ Fatal(...any) }) *Layout {
	one, other := mustFit(t, "410 W, 54 cells"), mustFit(t, "335 W, 54 cells")
	l, err := NewLayout([]StringLayout{
		{Count: 1, Panels: []Panels{{Model: one, Count: 1, Diodes: 3}, {Model: other, Count: 1, Diodes: 3, Condition: 1}}},
		{Count: 1, Panels: []Panels{{Model: one, Count: 2, Diodes: 3}}},
	})
	if err != nil {
		t.Fatal(err)
	}
	return l
}

// outdoors gives the conditions of unlikePair on one plane: cells above the air
// by their nominal temperature's rise (45 and 47.4 degC at 800 W/m2).
func outdoors(irradiance, air float64, to []Condition) {
	to[0] = Condition{Irradiance: irradiance, Cell: air + 25*irradiance/800}
	to[1] = Condition{Irradiance: irradiance, Cell: air + 27.4*irradiance/800}
}

// A layout under conditions is the strings built by hand under them, bit by bit,
// and a follower gives the same whatever it was asked before.
func TestLayoutIsTheStringsByHand(t *testing.T) {
	one, other := mustFit(t, "410 W, 54 cells"), mustFit(t, "335 W, 54 cells")
	l := unlikePair(t)
	follower := l.Follow()
	rapid.Check(t, func(t *rapid.T) {
		a := Condition{Irradiance: rapid.Float64Range(0, 1300).Draw(t, "light"), Cell: rapid.Float64Range(230, 350).Draw(t, "cell")}
		b := Condition{Irradiance: rapid.Float64Range(0, 1300).Draw(t, "other light"), Cell: rapid.Float64Range(230, 350).Draw(t, "other cell")}
		first, err := one.At(a.Irradiance, a.Cell)
		if err != nil {
			t.Fatal(err)
		}
		second, err := other.At(b.Irradiance, b.Cell)
		if err != nil {
			t.Fatal(err)
		}
		want, err := mustInput(t,
			String{Count: 1, Modules: []Module{{Curve: first, Count: 1, Diodes: 3}, {Curve: second, Count: 1, Diodes: 3}}},
			String{Count: 1, Modules: []Module{{Curve: first, Count: 2, Diodes: 3}}}).Maximum()
		if err != nil {
			t.Fatal(err)
		}
		for _, in := range []func() (*Input, error){func() (*Input, error) { return l.At(a, b) }, func() (*Input, error) { return follower.At(a, b) }} {
			got, err := in()
			if err != nil {
				t.Fatal(err)
			}
			best, err := got.Maximum()
			if err != nil || best != want {
				t.Fatalf("%+v, %v; by hand %+v", best, err, want)
			}
		}
	})
}

// Shade of a part of the string costs power, never more than all shaded so, and
// full shade of one panel is that panel bypassed: what the rest gives alone.
func TestShade(t *testing.T) {
	m := mustFit(t, "410 W, 54 cells")
	power := func(t interface{ Fatal(...any) }, panels ...Panels) float64 {
		l, err := NewLayout([]StringLayout{{Count: 1, Panels: panels}})
		if err != nil {
			t.Fatal(err)
		}
		in, err := l.At(Standard())
		if err != nil {
			t.Fatal(err)
		}
		best, err := in.Maximum()
		if err != nil {
			t.Fatal(err)
		}
		return best.Power()
	}
	alone := power(t, Panels{Model: m, Count: 2, Diodes: 3})
	if got := power(t, Panels{Model: m, Count: 2, Diodes: 3}, Panels{Model: m, Count: 1, Diodes: 3, Shade: 1}); math.Abs(got-alone) > 1e-6*alone {
		t.Errorf("one of three in the dark: %v W, the two alone %v W", got, alone)
	}
	rapid.Check(t, func(t *rapid.T) {
		s := rapid.Float64Range(0, 1).Draw(t, "shade")
		some := power(t, Panels{Model: m, Count: 2, Diodes: 3}, Panels{Model: m, Count: 1, Diodes: 3, Shade: s})
		if all := power(t, Panels{Model: m, Count: 3, Diodes: 3, Shade: s}); some < all*(1-1e-9) || some > alone*1.5*(1+1e-9) || some < alone*(1-1e-9) {
			t.Fatalf("shade %v of one: %v W, of all %v W, none of three %v W", s, some, all, alone*1.5)
		}
	})
}

// Three substrings in series are the panel.
func TestSubstrings(t *testing.T) {
	m := mustFit(t, "300 W, 60 cells")
	part, err := m.Substring(3)
	if err != nil {
		t.Fatal(err)
	}
	whole, err := m.At(700, 310)
	if err != nil {
		t.Fatal(err)
	}
	third, err := part.At(700, 310)
	if err != nil {
		t.Fatal(err)
	}
	best, err := mustInput(t, String{Count: 1, Modules: []Module{{Curve: third, Count: 3, Diodes: 1}}}).Maximum()
	if err != nil {
		t.Fatal(err)
	}
	within(t, "power of three thirds", best.Power(), whole.Maximum().Power(), 1e-8*best.Power())
	within(t, "open circuit of three thirds", 3*third.OpenCircuit(), whole.OpenCircuit(), 1e-9)
	if _, err := m.Substring(0); err == nil {
		t.Error("no substring is one")
	}
}

// The table against the search, over its whole span: within 1e-4 of rated power,
// for unlike panels, where maxima may change places, and within 2.5 kB. The search is held
// to a scan of the curve elsewhere.
func TestTableAgainstSearch(t *testing.T) {
	l := unlikePair(t)
	span := Span{Brightest: 1300, Coldest: 243.15, Hottest: 318.15}
	table, err := l.Tabulate(span, outdoors)
	if err != nil {
		t.Fatal(err)
	}
	if table.Bytes() > 2500 {
		t.Errorf("%d bytes", table.Bytes())
	}
	follower, to := l.Follow(), make([]Condition, 2)
	search := func(t interface{ Fatal(...any) }, irradiance, air float64) float64 {
		outdoors(irradiance, air, to)
		in, err := follower.At(to...)
		if err != nil {
			t.Fatal(err)
		}
		best, err := in.Maximum()
		if err != nil {
			t.Fatal(err)
		}
		return best.Power()
	}
	rated := search(t, 1300, 243.15)
	if table.Deviation() > 1e-4 || table.Deviation() == 0 {
		t.Errorf("deviation %v", table.Deviation())
	}
	rapid.Check(t, func(t *rapid.T) {
		irradiance := rapid.Float64Range(0, 1300).Draw(t, "irradiance")
		air := rapid.Float64Range(span.Coldest, span.Hottest).Draw(t, "air")
		got, err := table.Power(irradiance, air)
		if err != nil {
			t.Fatal(err)
		}
		if want := search(t, irradiance, air); math.Abs(got-want) > 1e-4*rated {
			t.Fatalf("%v W/m2, %v K: %v W, by search %v W", irradiance, air, got, want)
		}
	})
	if dark, err := table.Power(0, 280); err != nil || dark != 0 {
		t.Errorf("the dark gives %v W, %v", dark, err)
	}
	for name, c := range map[string][2]float64{"brighter": {1300.1, 280}, "below zero": {-1, 280}, "colder": {500, 243}, "hotter": {500, 319}, "no number": {math.NaN(), 280}, "no temperature": {5, math.NaN()}} {
		if _, err := table.Power(c[0], c[1]); err == nil {
			t.Errorf("%s than the table's span: taken", name)
		}
	}
}

func TestLayoutRefuses(t *testing.T) {
	m := mustFit(t, "410 W, 54 cells")
	good := func() []StringLayout {
		return []StringLayout{{Count: 1, Panels: []Panels{{Model: m, Count: 1, Diodes: 3}}}}
	}
	for name, change := range map[string]func([]StringLayout) []StringLayout{
		"no string":               func(s []StringLayout) []StringLayout { return nil },
		"no panel":                func(s []StringLayout) []StringLayout { s[0].Panels = nil; return s },
		"no parallel string":      func(s []StringLayout) []StringLayout { s[0].Count = 0; return s },
		"no panel in series":      func(s []StringLayout) []StringLayout { s[0].Panels[0].Count = 0; return s },
		"shade above 1":           func(s []StringLayout) []StringLayout { s[0].Panels[0].Shade = 1.1; return s },
		"a condition below zero":  func(s []StringLayout) []StringLayout { s[0].Panels[0].Condition = -1; return s },
		"no model":                func(s []StringLayout) []StringLayout { s[0].Panels[0].Model = Model{}; return s },
		"a blocking drop of 10 V": func(s []StringLayout) []StringLayout { s[0].Blocking, s[0].BlockingDrop = true, 10; return s },
	} {
		_, err := NewLayout(change(good()))
		refused(t, name, err)
	}
	l, err := NewLayout(good())
	if err != nil {
		t.Fatal(err)
	}
	_, err = l.At()
	refused(t, "no condition", err)
	_, err = l.At(Condition{Irradiance: math.NaN(), Cell: 298})
	refused(t, "no number", err)
	_, err = l.Tabulate(Span{Brightest: 1000, Coldest: 300, Hottest: 300}, func(g, k float64, to []Condition) { to[0] = Condition{g, k} })
	refused(t, "no span", err)
	_, err = l.Tabulate(Span{Brightest: 1000, Coldest: 300, Hottest: 320}, func(g, k float64, to []Condition) { to[0] = Condition{g, k + 200} })
	refused(t, "conditions out of range", err)
}

// The cost of a search of a layout with unlike panels in series and parallel, and
// of a table's hour: ratios to BenchmarkExactSolve in the same run.
func BenchmarkUnlikeInSeriesMaximum(b *testing.B) {
	l := unlikePair(b)
	to := make([]Condition, 2)
	outdoors(800, 293, to)
	in, err := l.At(to...)
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := in.Maximum(); err != nil {
			b.Fatal(err)
		}
	}
}

func BenchmarkHourBySearch(b *testing.B) {
	l := unlikePair(b)
	to := make([]Condition, 2)
	b.ReportAllocs()
	k := 0
	for b.Loop() {
		k++
		outdoors(float64(k%1200)+1, 293, to)
		in, err := l.At(to...)
		if err != nil {
			b.Fatal(err)
		}
		if _, err := in.Maximum(); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkYearByTable makes a table and asks it 8760 times, half of them in the
// dark: divide by 8760 times BenchmarkHourBySearch.
func BenchmarkYearByTable(b *testing.B) {
	l := unlikePair(b)
	b.ReportAllocs()
	for b.Loop() {
		table, err := l.Tabulate(Span{Brightest: 1300, Coldest: 243.15, Hottest: 318.15}, outdoors)
		if err != nil {
			b.Fatal(err)
		}
		for hour := range 8760 {
			if _, err := table.Power(math.Max(0, 1200*math.Sin(float64(hour)*math.Pi/12)), 293); err != nil {
				b.Fatal(err)
			}
		}
	}
}
