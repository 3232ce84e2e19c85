package rules_test

import (
	"math"
	"sort"
	"testing"

	"stringline/schema/quantity"
)

// TestAmpacityMost holds datasheet's bound on a maker's ampacity to the tables that
// codes print, each of which it must let through: NEC 310.16 and 310.17, 33 CFR
// 183.425 Table 5 (read), ISO 13297 Table A.1, IEC 60364-5-52 methods C and E. It is
// computed here afresh, by a square root. And to the other column of EN 50618: two
// cables that touch on a surface bear 0.8 of one in free air.
func TestAmpacityMost(t *testing.T) {
	areas, amps := codeTableOf(t, "datasheet", "ampacity_most").column(t)
	_, touching := codeTableOf(t, "iec", "pv_cable").column(t)
	for i, two := range touching {
		holdWithin(t, "two cables that touch", two, 0.8*amps[i], 0.02)
	}
	most := func(area, insulation float64, material string) float64 {
		area = math.Max(area, areas[0])
		i := min(max(sort.SearchFloat64s(areas, area), 1), len(areas)-1)
		one := amps[i-1] + (amps[i]-amps[i-1])*(area-areas[i-1])/(areas[i]-areas[i-1])
		if material == "Al" {
			one *= 0.79
		}
		return one * math.Sqrt((insulation-30)/60)
	}
	warm, share := codeTableOf(t, "datasheet", "ampacity_warmth").column(t)
	for i := range warm {
		holdWithin(t, "warmth", share[i], math.Sqrt((warm[i]-30)/60), 1e-4)
	}
	number := func(cell any, unit string) float64 {
		if v, ok := cell.(float64); ok {
			return v
		}
		q, err := quantity.ParseAs(cell.(string), unit)
		if err != nil {
			t.Fatal(err)
		}
		u, _ := quantity.Lookup(unit)
		return u.FromSI(q.SI)
	}
	held := 0
	for _, c := range []struct {
		book, table string
		warmth      float64 // of the whole table; 0 where a row says it
	}{
		{"us_2023", "ampacity_310_16", 0}, {"us_2023", "ampacity_310_17", 0}, {"marine", "conductor_cfr", 0}, {"marine", "conductor_iso", 0},
		{"iec", "method_e", 0}, {"iec", "method_c", 0}, {"iec", "method_c_xlpe", 90},
	} {
		for _, r := range codeTableOf(t, c.book, c.table).Rows {
			n := len(r)
			given, ok := r[n-1].(float64)
			if !ok {
				t.Fatalf("%s: %v", c.table, r)
			}
			material := "Cu"
			if m, ok := r[0].(string); ok && n == 4 {
				material = m
			}
			warmth := c.warmth
			if warmth == 0 {
				warmth = number(r[n-3], "degC")
			}
			area := number(r[n-2], "mm2")
			if bound := most(area, warmth, material); given > bound {
				t.Errorf("%s gives %g mm2 of %s at %g degC %g A, more than %.4g A", c.table, area, material, warmth, given, bound)
			}
			held++
		}
	}
	if held < 150 {
		t.Errorf("only %d rows were held", held)
	}
	if bound := most(70, 90, "Cu"); bound != 347 {
		t.Errorf("70 mm2 of 90 degC: %g A", bound)
	}
}
