package rules_test

import (
	"encoding/json"
	"io/fs"
	"math"
	"os"
	"slices"
	"testing"

	"stringline/rules"
	"stringline/schema/quantity"
)

// rows reads the rows of one of the codebook's tables.
func rows(t *testing.T, name string) [][]any {
	t.Helper()
	text, err := fs.ReadFile(rules.Books, "us_2023/data/"+name+".json")
	if err != nil {
		t.Fatal(err)
	}
	var table struct{ Rows [][]any }
	if err := json.Unmarshal(text, &table); err != nil {
		t.Fatal(err)
	}
	return table.Rows
}

// column gives the last cells of the rows that are wanted.
func column(t *testing.T, name string, want func([]any) bool) []float64 {
	var all []float64
	for _, r := range rows(t, name) {
		if want(r) {
			all = append(all, r[len(r)-1].(float64))
		}
	}
	return all
}

// area gives a size's cross-section in mm2.
func area(t *testing.T, size string) float64 {
	t.Helper()
	q, err := quantity.ParseAs(size, "mm2")
	if err != nil {
		t.Fatal(err)
	}
	return q.SI * 1e6
}

// TestAmbientTable: every factor of Table 310.15(B)(1) is the square root of the
// rise that is left over the rise at 30 degC (the code's own equation), to two places.
func TestAmbientTable(t *testing.T) {
	all := rows(t, "ambient_310_15_b_1")
	if len(all) != 10+13+16 {
		t.Errorf("%d rows", len(all))
	}
	for _, r := range all {
		insulation, ambient, factor := r[0].(float64), r[1].(float64), r[2].(float64)
		if want := math.Sqrt((insulation - ambient) / (insulation - 30)); math.Abs(factor-want) > 0.005+1e-9 {
			t.Errorf("%g degC insulation at %g degC: %g, by formula %.4f", insulation, ambient, factor, want)
		}
		if ambient > insulation-5 {
			t.Errorf("%g degC insulation has a row at %g degC: shared.ambient_factor takes the last for 5 K below", insulation, ambient)
		}
	}
}

// ampacities reads an ampacity table: by material and size the three columns.
func ampacities(t *testing.T, name string) map[string]map[string][3]float64 {
	t.Helper()
	table := map[string]map[string][3]float64{}
	for _, r := range rows(t, name) {
		material, size := r[0].(string), r[2].(string)
		if table[material] == nil {
			table[material] = map[string][3]float64{}
		}
		a := table[material][size]
		a[slices.Index([]string{"60 degC", "75 degC", "90 degC"}, r[1].(string))] = r[3].(float64)
		table[material][size] = a
	}
	return table
}

// TestAmpacityColumns holds the three columns of both ampacity tables to each
// other: heat flows with the rise over 30 degC, and resistance with 234.5 degC
// (copper; 228.1 degC aluminum) plus the conductor's temperature. Printed figures
// are rounded to 5 A, so that the ratio of two of them is loose by 2.5 A in each;
// 310.16 rests on older measurements up to 8 AWG and has 5 A there.
func TestAmpacityColumns(t *testing.T) {
	for _, name := range []string{"ampacity_310_16", "ampacity_310_17"} {
		for material, sizes := range ampacities(t, name) {
			zero := map[string]float64{"Cu": 234.5, "Al": 228.1}[material]
			for size, a := range sizes {
				for _, pair := range [][2]int{{0, 1}, {1, 2}} {
					low, high := float64(60+15*pair[0]), float64(60+15*pair[1])
					ratio := math.Sqrt((high - 30) / (low - 30) * (zero + low) / (zero + high))
					if got, want := a[pair[1]], a[pair[0]]*ratio; math.Abs(got-want) > 2.5+2.5*ratio {
						t.Errorf("%s %s %s: %g degC %g A, by the %g degC column %.1f A", name, material, size, high, got, low, want)
					}
				}
			}
		}
	}
}

// TestAmpacityGrows: a larger size, a hotter column and free air carry more, and
// aluminum carries 0.78 of copper: the root of its conductivity, 61 % of copper's.
func TestAmpacityGrows(t *testing.T) {
	closed, free := ampacities(t, "ampacity_310_16"), ampacities(t, "ampacity_310_17")
	for name, table := range map[string]map[string]map[string][3]float64{"310.16": closed, "310.17": free} {
		for material, sizes := range table {
			for a, x := range sizes {
				if x[0] <= 0 || x[0] >= x[1] || x[1] >= x[2] {
					t.Errorf("%s %s %s: %v", name, material, a, x)
				}
				for b, y := range sizes {
					if area(t, a) < area(t, b) && !(x[0] < y[0] && x[1] < y[1] && x[2] < y[2]) {
						t.Errorf("%s %s: %s %v and %s %v", name, material, a, x, b, y)
					}
				}
			}
		}
		for size, x := range table["Al"] {
			for i, copper := range table["Cu"][size] {
				if want := math.Sqrt(0.61) * copper; math.Abs(x[i]-want) > 2.5+0.05*want {
					t.Errorf("%s Al %s: %g A, of copper's %g A %.1f A", name, size, x[i], copper, want)
				}
			}
		}
	}
	for size, x := range closed["Cu"] {
		if y := free["Cu"][size]; y[0] <= x[0] || y[1] <= x[1] || y[2] <= x[2] {
			t.Errorf("%s: in free air %v, enclosed %v", size, y, x)
		}
	}
}

// TestSmallerTables holds the short tables to a formula or a second table.
func TestSmallerTables(t *testing.T) {
	// 240.4(D) is the 60 degC column of Table 310.16 from 14 AWG; 18 and 16 AWG stand alone.
	closed := ampacities(t, "ampacity_310_16")
	for _, r := range rows(t, "small_240_4_d") {
		material, size, device := r[0].(string), r[1].(string), r[2].(float64)
		if a, ok := closed[material][size]; ok && device != a[0] {
			t.Errorf("240.4(D) %s %s: %g A, the 60 degC column has %g A", material, size, device, a[0])
		}
	}
	// Table 690.7(A): 0.4 % a kelvin, the steepest usual coefficient of crystalline
	// silicon, and never more than 1.2 % below that.
	for _, r := range rows(t, "cold_690_7_a") {
		coldest, factor := r[0].(float64), r[1].(float64)
		if most := 1 + 0.004*(25-coldest); factor > most+1e-9 || factor < most-0.012 {
			t.Errorf("690.7(A) at %g degC: %g, by 0.4 %%/K %g", coldest, factor, most)
		}
	}
	// Table 310.15(C)(1), check value B6 (public transcription).
	want := map[float64]float64{3: 1, 6: 0.8, 9: 0.7, 20: 0.5, 30: 0.45, 40: 0.4, 200: 0.35}
	for _, r := range rows(t, "grouping_310_15_c_1") {
		if want[r[0].(float64)] != r[1].(float64) {
			t.Errorf("grouping %v", r)
		}
		delete(want, r[0].(float64))
	}
	if len(want) > 0 {
		t.Errorf("grouping lacks %v", want)
	}
	// 240.6(A): steps of a third at most above 15 A; breakers have what fuses have from
	// 10 A, the size that the edition of 2023 added (from memory).
	fuse := column(t, "standard_240_6", func(r []any) bool { return r[0] == "fuse" })
	breaker := column(t, "standard_240_6", func(r []any) bool { return r[0] == "breaker" })
	if !slices.Equal(fuse[3:], breaker) || !slices.Equal(fuse[:5], []float64{1, 3, 6, 10, 15}) || breaker[len(breaker)-1] != 800 {
		t.Errorf("standard sizes: fuses %v, breakers %v", fuse, breaker)
	}
	for i, s := range breaker[2:] {
		if step := s / breaker[i+1]; step <= 1 || step > 4.0/3+1e-9 {
			t.Errorf("from %g A to %g A", breaker[i+1], s)
		}
	}
	// Table 250.122: sizes grow with the device, and each carries in free air, at
	// 75 degC, no less than a third of it.
	free := ampacities(t, "ampacity_310_17")["Cu"]
	last := 0.0
	for _, r := range rows(t, "grounding_250_122") {
		device, size := r[0].(float64), r[1].(string)
		if a := area(t, size); a <= last {
			t.Errorf("250.122 at %g A: %s is no larger than before", device, size)
		} else {
			last = a
		}
		if carries := free[size][1]; carries < device/3.5 {
			t.Errorf("250.122 at %g A: %s carries %g A", device, size, carries)
		}
	}
}

// TestSizes: the slack of half a percent by which sizes are looked up covers what
// printed areas are rounded by (chapter 9 table 8), and makes no metric size one
// gauge larger: each takes the row whose area is not larger.
func TestSizes(t *testing.T) {
	text, err := os.ReadFile("../testdata/published/awg-areas.json")
	if err != nil {
		t.Fatal(err)
	}
	var printed struct {
		Values []struct {
			Size string
			MM2  float64 `json:"mm2"`
		}
	}
	if err := json.Unmarshal(text, &printed); err != nil {
		t.Fatal(err)
	}
	for _, p := range printed.Values {
		if exact := area(t, p.Size); p.MM2*1.005 < exact || p.MM2 > exact*1.005 {
			t.Errorf("%s is printed as %g mm2, by ASTM B258 %g", p.Size, p.MM2, exact)
		}
	}
	judged := unitedStates(t)
	for metric, gauge := range map[string]string{"2.5": "14 AWG", "4": "12 AWG", "6": "10 AWG", "10": "8 AWG", "16": "6 AWG", "25": "4 AWG", "35": "2 AWG",
		"50": "1 AWG", "70": "2/0 AWG", "95": "3/0 AWG", "120": "4/0 AWG", "150": "250 kcmil", "185": "300 kcmil"} {
		want := ampacities(t, "ampacity_310_16")["Cu"][gauge][2]
		if got := (conditions{size: metric + " mm2", insulation: 90, ambient: "30 degC", grouped: 2}).ampacity(t, judged); got != want {
			t.Errorf("%s mm2 carries %g A, want that of %s, %g A", metric, got, gauge, want)
		}
	}
}

// TestConductorAreas holds chapter 9, Table 5, which is from memory, to what its
// figures are made of: the diameter of the stranded conductor (Table 8) and the
// thickness of its insulation and jacket, in mils, as the standards of the types
// give them (UL 83 and UL 44, from memory).
func TestConductorAreas(t *testing.T) {
	diameter := map[string]float64{ // inches, Table 8
		"14 AWG": 0.073, "12 AWG": 0.092, "10 AWG": 0.116, "8 AWG": 0.146, "6 AWG": 0.184, "4 AWG": 0.232, "3 AWG": 0.260, "2 AWG": 0.292,
		"1 AWG": 0.332, "1/0 AWG": 0.372, "2/0 AWG": 0.418, "3/0 AWG": 0.470, "4/0 AWG": 0.528, "250 kcmil": 0.575, "300 kcmil": 0.630,
	}
	// Sizes from each first one on have these mils on every side.
	thickness := map[string][]struct {
		from string
		mils float64
	}{
		"thwn2": {{"14 AWG", 15 + 4}, {"10 AWG", 20 + 4}, {"8 AWG", 30 + 5}, {"4 AWG", 40 + 6}, {"1 AWG", 50 + 7}, {"250 kcmil", 60 + 8}},
		"xhhw2": {{"14 AWG", 30}, {"8 AWG", 45}, {"1 AWG", 55}, {"250 kcmil", 65}},
		"other": {{"14 AWG", 45 + 15}, {"8 AWG", 60 + 30}, {"1 AWG", 80 + 45}, {"250 kcmil", 95 + 65}},
	}
	all := rows(t, "conductor_area_5")
	if len(all) != 6*len(diameter) {
		t.Errorf("%d rows", len(all))
	}
	for _, r := range all {
		kind, size, got := r[0].(string), r[1].(string), r[2].(float64)
		steps, own := thickness[kind]
		if !own {
			steps = thickness["other"] // PV wire, USE-2 and what has no table: the thickest
		}
		mils := 0.0
		for _, s := range steps {
			if area(t, size) >= area(t, s.from) {
				mils = s.mils
			}
		}
		outside := diameter[size] + 2*mils/1000
		if want := math.Pi / 4 * outside * outside * 25.4 * 25.4; math.Abs(got-want) > 0.005*want {
			t.Errorf("%s %s: %g mm2, by diameter and thickness %.2f mm2", kind, size, got, want)
		}
	}
}
