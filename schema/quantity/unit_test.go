package quantity

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"
)

func TestTable(t *testing.T) {
	seen := map[string]bool{}
	for _, u := range Units() {
		if seen[u.Symbol] {
			t.Errorf("%q stands twice in the table", u.Symbol)
		}
		seen[u.Symbol] = true
		if got, ok := Lookup(u.Symbol); !ok || got != u {
			t.Errorf("%q: looked up as %v, %v", u.Symbol, got, ok)
		}
		if u.Symbol != gaugeSymbol && !(u.Scale > 0) {
			t.Errorf("%q: scale %v", u.Symbol, u.Scale)
		}
		if (u.Offset != 0) != u.Dimension.Point {
			t.Errorf("%q: offset %v, point %v", u.Symbol, u.Offset, u.Dimension.Point)
		}
		if strings.HasPrefix(u.Dimension.Noun(), "a quantity in") {
			t.Errorf("%q: its dimension has no name", u.Symbol)
		}
		for _, r := range u.Symbol {
			if r > 127 {
				t.Errorf("%q: the table's own spelling is plain", u.Symbol)
			}
		}
	}
	Units()[0].Symbol = "changed"
	if units[0].Symbol == "changed" {
		t.Error("the caller can change the table")
	}
}

// The documents' units of specification part 2, no more and no less.
func TestDocumentUnits(t *testing.T) {
	want := strings.Split("V,A,W,Wh,Ah,degC,K,m,mm2,ohm,ohm/m,%,%/K,V/K,deg,W/m2,kWh/m2,m3/h,kg,N m,s,h,d,", ",")
	for _, s := range want {
		u, ok := DocumentUnit(s)
		if !ok || u.Symbol != s {
			t.Errorf("%q: %v, %v", s, u, ok)
		}
	}
	if len(documentSymbols) != len(want) {
		t.Errorf("%d document units, want %d", len(documentSymbols), len(want))
	}
	for _, s := range []string{"word", "yes_no", "kW", "AWG", "mV", "°C", "VA"} {
		if u, ok := DocumentUnit(s); ok {
			t.Errorf("%q is a document unit: %v", s, u)
		}
	}
}

func TestDimensions(t *testing.T) {
	d := func(symbol string) Dimension { return MustLookup(symbol).Dimension }
	for _, c := range []struct {
		what      string
		got, want Dimension
	}{
		{"V x A = W", d("V").Times(d("A")), d("W")},
		{"W x h = Wh", d("W").Times(d("h")), d("Wh")},
		{"A x h = Ah", d("A").Times(d("h")), d("Ah")},
		{"V x Ah = Wh", d("V").Times(d("Ah")), d("Wh")},
		{"V / A = ohm", d("V").Over(d("A")), d("ohm")},
		{"ohm / m = ohm/m", d("ohm").Over(d("m")), d("ohm/m")},
		{"mm x mm = mm2", d("mm").Times(d("mm")), d("mm2")},
		{"W / m2 = W/m2", d("W").Over(d("mm2")), d("W/m2")},
		{"Wh / m2 = kWh/m2", d("Wh").Over(d("mm2")), d("kWh/m2")},
		{"% / K = %/K", d("%").Over(d("K")), d("%/K")},
		{"V / K = V/K", d("V").Over(d("K")), d("V/K")},
		{"V x %/K = V/K", d("V").Times(d("%/K")), d("V/K")},
		{"V / V = a number", d("V").Over(d("V")), Dimension{}},
		{"N m x deg = Wh", d("N m").Times(d("deg")), d("Wh")},
		{"degC x number = degC", d("degC").Times(d("%")), d("degC")},
		{"number x degC = degC", d("").Times(d("degC")), d("degC")},
		{"degC / number = degC", d("degC").Over(d("")), d("degC")},
		{"degC x V is no temperature", d("degC").Times(d("V")), d("K").Times(d("V"))},
		{"degC / degC = a number", d("degC").Over(d("degC")), Dimension{}},
	} {
		if diff := cmp.Diff(c.want, c.got); diff != "" {
			t.Errorf("%s: %s", c.what, diff)
		}
	}
	for _, pair := range [][2]string{{"N m", "Wh"}, {"degC", "K"}, {"deg", ""}, {"m", "mm2"}} {
		if d(pair[0]) == d(pair[1]) {
			t.Errorf("%s and %s have one dimension", pair[0], pair[1])
		}
	}
	if !d("%").IsNumber() || !d("").IsNumber() || d("deg").IsNumber() || d("degC").IsNumber() {
		t.Error("IsNumber")
	}
}

func TestSums(t *testing.T) {
	d := func(symbol string) Dimension { return MustLookup(symbol).Dimension }
	for _, c := range []struct {
		a, b        string
		plus, minus string // "-" where there is none
	}{
		{"degC", "K", "degC", "degC"}, {"K", "degC", "degC", "-"}, {"degC", "degC", "-", "K"}, {"K", "K", "K", "K"},
		{"V", "V", "V", "V"}, {"V", "A", "-", "-"}, {"%", "", "", ""}, {"degC", "V", "-", "-"},
	} {
		for name, f := range map[string]struct {
			of   func(Dimension) (Dimension, bool)
			want string
		}{"plus": {d(c.a).Plus, c.plus}, "minus": {d(c.a).Minus, c.minus}} {
			got, ok := f.of(d(c.b))
			if ok != (f.want != "-") || ok && got != d(f.want) {
				t.Errorf("%s %s %s: %v, %v; want %s", c.a, name, c.b, got, ok, f.want)
			}
		}
	}
}

func TestDimensionText(t *testing.T) {
	for symbol, want := range map[string]string{
		"kV": "V", "VA": "W", "kWh": "Wh", "degF": "degC", "cm2": "mm2", "AWG": "mm2", "km": "m", "%": "", "min": "s", "lb": "kg", "ohm/kft": "ohm/m",
		"mV/K": "V/K", "mA/K": "A/K", "W/K": "W/K", "Nm": "N m", "%/degC": "%/K",
	} {
		if got := MustLookup(symbol).Dimension.String(); got != want {
			t.Errorf("%s: %q, want %q", symbol, got, want)
		}
	}
	v := MustLookup("V").Dimension
	if got := v.Times(v).String(); got != "kg2 m4 s-6 A-2" {
		t.Errorf("V2: %q", got)
	}
	if got := v.Times(v).Noun(); got != "a quantity in kg2 m4 s-6 A-2" {
		t.Errorf("V2: %q", got)
	}
	if u := v.Times(v).Unit(); u.ToSI(3) != 3 {
		t.Errorf("V2: %v", u)
	}
	// A chain of factors stops at the end of the exponents; it does not wrap.
	far := v
	for range 200 {
		far = far.Times(v)
	}
	if far.Length != 127 || far.Time != -127 || far.Mass != 127 || far.Current != -127 {
		t.Errorf("201 factors: %+v", far)
	}
}

func TestDimensionProperties(t *testing.T) {
	anyDimension := rapid.Custom(func(t *rapid.T) Dimension {
		e := func(name string) int8 { return rapid.Int8Range(-20, 20).Draw(t, name) }
		return Dimension{Length: e("m"), Mass: e("kg"), Time: e("s"), Current: e("A"), Temperature: e("K"), Angle: e("rad")}
	})
	rapid.Check(t, func(t *rapid.T) {
		a, b := anyDimension.Draw(t, "a"), anyDimension.Draw(t, "b")
		if a.Times(b) != b.Times(a) || a.Times(b).Over(b) != a || !a.Over(a).IsNumber() {
			t.Fatalf("%+v and %+v", a, b)
		}
	})
}

func TestFormat(t *testing.T) {
	for _, c := range []struct {
		si   float64
		unit string
		want string
	}{
		// The samples of specification part 4.
		{169.82592, "V", "169.8 V"}, {150, "V", "150.0 V"}, {19.82592, "V", "19.8 V"}, {-19.82592, "V", "-19.8 V"}, {100, "A", "100.0 A"}, {60, "A", "60.0 A"},
		{127.4, "V", "127.4 V"}, {0.0191, "%", "1.91 %"}, {0.02, "%", "2.00 %"}, {0.132, "%", "13.2 %"}, {241.75, "degC", "-31.4 degC"},
		// What documents hold in V/K people read in mV/K.
		{-0.004, "V/K", "-4.00 mV/K"}, {0, "V/K", "0 mV/K"}, {-0.12, "V/K", "-120.0 mV/K"}, {-0.004, "mV/K", "-4.00 mV/K"},
		// Decades and their edges.
		{9.994, "A", "9.99 A"}, {9.996, "A", "10.0 A"}, {99.94, "A", "99.9 A"}, {99.96, "A", "100.0 A"}, {999.94, "A", "999.9 A"}, {999.96, "A", "1000 A"},
		{1000, "W", "1000 W"}, {12345, "W", "12340 W"}, {20000, "A", "20000 A"}, {1, "A", "1.00 A"}, {0.9996, "A", "1.00 A"}, {0.5, "A", "0.500 A"}, {0.1, "A", "0.100 A"},
		{0.0042, "ohm", "0.00420 ohm"}, {0.001, "ohm", "0.00100 ohm"}, {0.0009999, "ohm", "0.00100 ohm"}, {0, "V", "0 V"}, {1e-12, "A", "1e-12 A"}, {1e20, "A", "1e+20 A"},
		{246.15, "degC", "-27.0 degC"}, {273.15, "degC", "0.0 degC"}, {273.14, "degC", "0.0 degC"}, {278.15, "°C", "5.0 degC"}, {233.15, "degF", "-40.0 degF"},
		{3, "", "3"}, {2.5, "", "2.50"}, {0, "", "0"}, {1234567, "", "1234567"}, {math.Pi / 4, "deg", "45.0 deg"}, {7200, "Wh", "2.00 Wh"}, {86400 * 2.5, "d", "2.50 d"},
		{6e-6, "mm2", "6.00 mm2"}, {107.21930257703052e-6, "AWG", "4/0 AWG"}, {6e-6, "AWG", "6.00 mm2"}, {0, "AWG", "0 mm2"}, {-1, "AWG", "-1000000 mm2"},
		{math.NaN(), "V", "unknown"}, {math.Inf(1), "V", "unknown"}, {5, "furlong", "5.00 furlong"}, {5, "word", "5.00 word"},
		{math.Copysign(0, -1), "V", "0 V"}, {math.MaxFloat64, "A", "1.798e+308 A"}, {math.MaxFloat64, "%", "unknown"}, {5e-324, "A", "4.941e-324 A"},
	} {
		if got := Format(c.si, c.unit); got != c.want {
			t.Errorf("%v %s: %q, want %q", c.si, c.unit, got, c.want)
		}
	}
}

// What Format writes differs from the value by no more than half of its third
// significant digit.
func TestFormatIsNear(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := rapid.Float64Range(-1e6, 1e6).Draw(t, "value")
		if rapid.Bool().Draw(t, "small") {
			v *= 1e-6
		}
		text, _, _ := strings.Cut(Format(v, "A"), " ")
		got, err := strconv.ParseFloat(text, 64)
		if err != nil {
			t.Fatal(err)
		}
		if math.Abs(got-v) > 0.00501*math.Abs(v) {
			t.Fatalf("%v written as %s", v, text)
		}
	})
}

func TestRound(t *testing.T) {
	for _, c := range []struct{ v, want float64 }{
		{169.825920000001, 169.82592}, {0.1 + 0.2, 0.3}, {123456789.4, 123456789}, {1234567894, 1234567890}, {-1.0000000049, -1}, {1.000000006, 1.00000001}, {0, 0}, {1e-300, 1e-300},
		{math.MaxFloat64, 1.79769313e308},
	} {
		if got := Round(c.v); got != c.want {
			t.Errorf("%v: %v, want %v", c.v, got, c.want)
		}
	}
	if math.Signbit(Round(math.Copysign(0, -1))) {
		t.Error("negative zero stays negative")
	}
	if !math.IsNaN(Round(math.NaN())) || !math.IsInf(Round(math.Inf(-1)), -1) {
		t.Error("NaN and infinities come back unchanged")
	}
}

func TestRoundIsNear(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := rapid.Float64().Draw(t, "v")
		r := Round(v)
		if r != Round(r) || v != 0 && math.Abs(v) > 1e-290 && math.Abs(v) < 1e300 && math.Abs(r-v) > 5.01e-9*math.Abs(v) {
			t.Fatalf("%v rounds to %v", v, r)
		}
	})
}
