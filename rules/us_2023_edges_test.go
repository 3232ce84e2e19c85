package rules_test

import (
	"fmt"
	"math"
	"os"
	"slices"
	"strings"
	"testing"

	"stringline/lint/verdict"
)

// TestRowEdges asks every table of conductors at both edges of its rows, through
// the rule: at a row's last degree or conductor, and a step beyond, where the next
// row counts and behind the last one nothing is carried.
func TestRowEdges(t *testing.T) {
	judged := unitedStates(t)
	all := rows(t, "ambient_310_15_b_1")
	closed := ampacities(t, "ampacity_310_16")["Cu"]
	for i, r := range all {
		insulation, ambient, factor := r[0].(float64), r[1].(float64), r[2].(float64)
		base := closed["4/0 AWG"][int(insulation-60)/15]
		next := 0.0
		if i+1 < len(all) && all[i+1][0] == r[0] {
			next = all[i+1][2].(float64)
		}
		for _, at := range []struct{ degrees, factor float64 }{{ambient, factor}, {ambient - 0.5, factor}, {ambient + 0.5, next}} {
			if got := (conditions{size: "4/0 AWG", insulation: insulation, ambient: fmt.Sprintf("%g degC", at.degrees), grouped: 2}).ampacity(t, judged); math.Abs(got-base*at.factor) > 1e-6*base {
				t.Errorf("%g degC insulation at %g degC: %g A, want %g x %g", insulation, at.degrees, got, base, at.factor)
			}
		}
	}
	for grouped, factor := range map[int]float64{1: 1, 3: 1, 4: 0.8, 6: 0.8, 7: 0.7, 9: 0.7, 10: 0.5, 20: 0.5, 21: 0.45, 30: 0.45, 31: 0.4, 40: 0.4, 41: 0.35, 200: 0.35} {
		if got := (conditions{size: "10 AWG", insulation: 90, ambient: "30 degC", grouped: grouped}).ampacity(t, judged); math.Abs(got-40*factor) > 1e-9 {
			t.Errorf("%d conductors: %g A, want 40 x %g", grouped, got, factor)
		}
	}
	for _, freeAir := range []bool{false, true} {
		name := map[bool]string{false: "ampacity_310_16", true: "ampacity_310_17"}[freeAir]
		for material, sizes := range ampacities(t, name) {
			for size, a := range sizes {
				for i, insulation := range []float64{60, 75, 90} {
					c := conditions{size: size, material: material, insulation: insulation, ambient: "30 degC", grouped: 2, freeAir: freeAir}
					if got := c.ampacity(t, judged); math.Abs(got-a[i]) > 1e-9 {
						t.Errorf("%s %s %s at %g degC: %g A, want %g A", name, material, size, insulation, got, a[i])
					}
				}
				// A hair smaller than printed rounding explains takes the row below.
				c := conditions{size: fmt.Sprintf("%.6f mm2", area(t, size)*0.994), material: material, insulation: 90, ambient: "30 degC", grouped: 2, freeAir: freeAir}
				if got := c.ampacity(t, judged); got >= a[2] {
					t.Errorf("%s %s a little below %s: %g A", name, material, size, got)
				}
			}
		}
	}
}

// TestLargestDevice holds 240.4(B) to a computation of its own, over many
// ampacities: the smaller of the corrected one and that of the terminals' column
// (110.14(C), unmarked ones 60 degC) where it is a standard size, else the next one.
func TestLargestDevice(t *testing.T) {
	judged := unitedStates(t)
	exact := 0
	for size, a := range ampacities(t, "ampacity_310_16")["Cu"] {
		for i, insulation := range []float64{60, 75, 90} {
			for ambient, factors := range map[string][3]float64{"30 degC": {1, 1, 1}, "40 degC": {0.82, 0.88, 0.91}, "55 degC": {0.41, 0.67, 0.76}} {
				for column, terminals := range []float64{0, 75, 90} {
					for kind, sizes := range map[string][]float64{"fuse": {1, 3, 6, 10}, "breaker": {10}} {
						carried := min(a[i]*factors[i], a[min(i, column)])
						sizes = append(sizes, 15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 110, 125, 150, 175, 200, 225, 250, 300, 350, 400) // check value B7
						want := sizes[slices.IndexFunc(sizes, func(s float64) bool { return s >= carried*(1-1e-9) })]
						if math.Abs(want-carried) < 1e-9 {
							exact++
						}
						c := conditions{size: size, insulation: insulation, ambient: ambient, grouped: 2, terminals: terminals, device: kind + " {\n    rating = \"5 A\"\n  }"}
						if got := limit(t, c.judged(t, judged), "device_protects_conductor|protection.charger.main|"); math.Abs(got-want) > 1e-9 {
							t.Errorf("%s of %g A (%s at %s, terminals of %g degC): at most %g A, want %g A", kind, carried, size, ambient, terminals, got, want)
						}
					}
				}
			}
		}
	}
	if exact < 20 {
		t.Errorf("only %d ampacities were standard sizes themselves", exact)
	}
}

// TestSmallDeviceEdges asks 240.4(D) at each of its sizes and just above it.
func TestSmallDeviceEdges(t *testing.T) {
	judged := unitedStates(t)
	for _, r := range rows(t, "small_240_4_d") {
		material, size, device := r[0].(string), r[1].(string), r[2].(float64)
		for _, by := range []float64{1, 1.1} {
			c := conditions{size: fmt.Sprintf("%.6f mm2", area(t, size)*by), material: material, insulation: 90, ambient: "30 degC", grouped: 2, device: "fuse {\n    rating = \"5 A\"\n  }"}
			if got := limit(t, c.judged(t, judged), "small_conductor|protection.charger.main|"); got != device {
				t.Errorf("%s %s x %g: at most %g A, want %g A", material, size, by, got, device)
			}
		}
	}
}

// TestGroundingEdges asks Table 250.122 at each of its ratings and a step above,
// where the next row counts.
func TestGroundingEdges(t *testing.T) {
	judged := unitedStates(t)
	text, err := os.ReadFile("testdata/published/study-note.design.hcl")
	if err != nil {
		t.Fatal(err)
	}
	all := rows(t, "grounding_250_122")
	for i, r := range all {
		device := r[0].(float64)
		cases := map[float64]string{device: r[1].(string)}
		if i+1 < len(all) {
			cases[device+0.5] = all[i+1][1].(string)
		}
		for rating, size := range cases {
			changed := strings.Replace(string(text), "    fuse {\n      class  = \"gPV\"\n      rating = \"20 A\"", fmt.Sprintf("    fuse {\n      class  = \"gPV\"\n      rating = \"%g A\"", rating), 1)
			changed = strings.Replace(changed, "      size       = \"10 AWG\"", "      size       = \"300 kcmil\"\n      grounding_size = \"300 kcmil\"", 1)
			if got := limit(t, judged(t, changed), "grounding_conductor|cable_run.string.south.a|"); math.Abs(got-area(t, size)) > 1e-6*got {
				t.Errorf("at %g A: %g mm2, want %s", rating, got, size)
			}
		}
	}
}

// TestColdRowEdges asks Table 690.7(A) at both edges of each row: between two rows
// the colder one counts, above 25 degC the first, and below -40 degC it ends.
func TestColdRowEdges(t *testing.T) {
	judged := unitedStates(t)
	text, err := os.ReadFile("testdata/published/study-note.design.hcl")
	if err != nil {
		t.Fatal(err)
	}
	silent := strings.Replace(string(text), "  temp_voc           = \"-0.27 %/K\"\n", "", 1)
	by := func(coldest float64) verdict.Verdict {
		return judged(t, strings.Replace(silent, `"-20 degC"`, fmt.Sprintf(`"%g degC"`, coldest), 1))["pv_voltage|string.south.a|by table"]
	}
	all := rows(t, "cold_690_7_a")
	const stc = 135.0 // V: three panels of 45.0 V
	for i, r := range all {
		coldest, factor := r[0].(float64), r[1].(float64)
		cases := map[float64]float64{coldest: factor, coldest + 0.5: factor}
		if i+1 < len(all) {
			cases[coldest-0.5] = all[i+1][1].(float64) // -5 degC has 1.12, -5.5 degC 1.14
		}
		for at, want := range cases {
			v := by(at)
			if v.Is == nil || v.Is.Value == nil || math.Abs(*v.Is.Value-stc*want) > 1e-6 {
				t.Errorf("at %g degC: %s %s, want %g V x %g", at, v.Outcome, v.Message, stc, want)
			}
		}
	}
	if v := by(40); v.Is == nil || *v.Is.Value != stc {
		t.Errorf("at 40 degC: %s", v.Message)
	}
	if v := by(-40.5); v.Outcome != verdict.DoesNotApply {
		t.Errorf("below -40 degC the table %s", v.Outcome)
	}
	coefficient := judged(t, strings.Replace(silent, `"-20 degC"`, `"-40.5 degC"`, 1))["pv_voltage|string.south.a|by its coefficients"]
	if coefficient.Outcome != verdict.Unproven || !slices.Contains(coefficient.Missing, "panel.note-400.temp_voc") {
		t.Errorf("below -40 degC without a coefficient: %s %v", coefficient.Outcome, coefficient.Missing)
	}
	// The table is the makers' coefficients' rival, and near them: -0.27 %/K is milder
	// than the table from 15 degC down (check value A2).
	for _, r := range all {
		if coldest := r[0].(float64); coldest <= 15 && 1+0.0027*(25-coldest) >= r[1].(float64) {
			t.Errorf("at %g degC the table's %g is no more than -0.27 %%/K gives", coldest, r[1])
		}
	}
}
