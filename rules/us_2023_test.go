package rules_test

import (
	"context"
	"encoding/json"
	"fmt"
	"io/fs"
	"math"
	"os"
	"slices"
	"strings"
	"testing"

	"stringline/lint/facts"
	"stringline/lint/judge"
	"stringline/lint/verdict"
	"stringline/rules"
	"stringline/schema/design"
	"stringline/schema/quantity"
)

// unitedStates loads us_2023, and gives a function that judges a design's text by
// it alone: verdicts by rule, subject and which.
func unitedStates(t *testing.T) func(t *testing.T, text string) map[string]verdict.Verdict {
	t.Helper()
	files, err := fs.Sub(rules.Books, "us_2023")
	if err != nil {
		t.Fatal(err)
	}
	book, problems := judge.Load(context.Background(), judge.Source{Name: "us_2023", Files: files, Show: "us_2023", Embedded: true})
	if book == nil {
		t.Fatal(problems)
	}
	j := judge.New(judge.Options{Books: []*judge.Book{book}})
	return func(t *testing.T, text string) map[string]verdict.Verdict {
		t.Helper()
		d := design.Load(design.Options{Files: files, Path: "x.design.hcl", Text: []byte(text), Declares: func(name string) (map[string][]design.Attribute, bool) {
			return book.Codebook().Declares(), name == "us_2023"
		}})
		if len(d.Problems) > 0 {
			t.Fatal(d.Problems)
		}
		vs, err := j.Judge(context.Background(), facts.New(d))
		if err != nil {
			t.Fatal(err)
		}
		byKey := map[string]verdict.Verdict{}
		for _, v := range vs {
			byKey[strings.TrimPrefix(v.Key(), "us_2023.")] = v
		}
		return byKey
	}
}

// published is one figure of a published example.
type published struct {
	key    string  // of the verdict
	is     float64 // amperes; 0: not compared
	limit  float64
	met    bool
	source string
}

// TestPublishedExamples holds the currents, derated ampacities and sizes of
// published examples. Tolerance 0.3 %: published work rounds 1.5625 to 1.56.
func TestPublishedExamples(t *testing.T) {
	judged := unitedStates(t)
	const (
		appendix = "Wiles, Suggested Practices, Sandia National Laboratories, design examples (recomputed)"
		memory   = "the same (from memory, recomputed)"
		note     = "study note on the 2023 code (recomputed)"
	)
	for file, figures := range map[string][]published{
		"residential-subarrays": {
			{"conductor_corrected|cable_run.string.one.a|", 4.06, 20.3, true, appendix + ": 35 A x 0.58 on 14 AWG"},
			{"conductor_continuous|cable_run.string.one.a|", 5.08, 35, true, appendix},
			{"conductor_corrected|cable_run.array.one|", 20.3, 31.9, true, appendix + ": 55 A x 0.58 on 10 AWG"},
			{"conductor_continuous|cable_run.array.one|", 25.39, 55, true, appendix},
			{"device_continuous|protection.array.one|", 30, 25.39, true, appendix + ": a 30 A fuse"},
			{"small_conductor|protection.array.one|", 30, 30, true, "240.4(D): 10 AWG"},
			{"conductor_terminals|cable_run.ac_output.house|", 64.6, 85, true, memory + ": 500 W at 10.75 V and 90 %"},
			{"device_continuous|protection.ac_output.house|", 70, 64.6, true, memory},
			{"conductor_terminals|cable_run.bank.house|", 70.85, 85, true, memory + ": 64.6 A + 1.25 x 5 A, given as 71 A"},
			{"device_continuous|protection.bank.house|", 80, 70.85, true, memory + ": an 80 A fuse"},
		},
		"residential-array": {
			{"conductor_corrected|cable_run.array.whole|", 40.6, 46.4, true, memory + ": 80 A x 0.58 on 8 AWG"},
			{"device_continuous|protection.array.whole|", 60, 50.7, true, memory + ": a 60 A breaker"},
		},
		"study-note": {
			{"conductor_corrected|cable_run.string.south.a|", 14.0, 34.8, true, note + ": 40 A x 0.87"},
			{"conductor_continuous|cable_run.string.south.a|", 17.5, 40, true, note},
			{"device_continuous|protection.string.south.a|", 20, 17.5, true, note + ": next standard fuse 20 A"},
			{"conductor_corrected|cable_run.ac_output.house|", 133.7, 195, true, "2500 W at 22 V and 85 % (recomputed)"},
			{"conductor_terminals|cable_run.ac_output.house|", 167.1, 175, true, "the same, x 1.25, on 2/0 AWG"},
			{"device_continuous|protection.ac_output.house|", 175, 167.1, true, "the same"},
		},
	} {
		text, err := os.ReadFile("testdata/published/" + file + ".design.hcl")
		if err != nil {
			t.Fatal(err)
		}
		verdicts := judged(t, string(text))
		for _, want := range figures {
			v, ok := verdicts[want.key]
			if !ok || v.Is == nil || v.Is.Value == nil || len(v.Limits) != 1 || v.Limits[0].Value == nil {
				t.Errorf("%s: %s: no figures: %s %s", file, want.key, v.Outcome, v.Message)
				continue
			}
			if is, limit := *v.Is.Value, *v.Limits[0].Value; math.Abs(is-want.is) > 0.003*want.is || math.Abs(limit-want.limit) > 0.003*want.limit {
				t.Errorf("%s: %s: %g against %g, want %g against %g (%s)", file, want.key, is, limit, want.is, want.limit, want.source)
			}
			if (v.Outcome == verdict.Meets) != want.met {
				t.Errorf("%s: %s %s", file, want.key, v.Outcome)
			}
		}
		for key, v := range verdicts {
			if v.Outcome == verdict.Void {
				t.Errorf("%s: %s is void: %s", file, key, v.Message)
			}
		}
	}
	// The sizes that the examples choose are the next standard ones: 240.6(A), check value B7.
	standard := column(t, "standard_240_6", func(r []any) bool { return r[0] == "fuse" })
	for need, want := range map[float64]float64{25.39: 30, 50.78: 60, 70.85: 80, 17.5: 20, 167.1: 175, 21.72: 25} {
		i := slices.IndexFunc(standard, func(s float64) bool { return s >= need })
		if i < 0 || standard[i] != want {
			t.Errorf("the next standard size above %g A is not %g A", need, want)
		}
	}
}

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
	// 240.6(A): steps of a third at most above 15 A; breakers have what fuses have from 15 A.
	fuse := column(t, "standard_240_6", func(r []any) bool { return r[0] == "fuse" })
	breaker := column(t, "standard_240_6", func(r []any) bool { return r[0] == "breaker" })
	if !slices.Equal(fuse[4:], breaker) || !slices.Equal(fuse[:5], []float64{1, 3, 6, 10, 15}) || breaker[len(breaker)-1] != 800 {
		t.Errorf("standard sizes: fuses %v, breakers %v", fuse, breaker)
	}
	for i, s := range breaker[1:] {
		if step := s / breaker[i]; step <= 1 || step > 4.0/3+1e-9 {
			t.Errorf("from %g A to %g A", breaker[i], s)
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
		if got := ampacity(t, judged, metric+" mm2", 90, "30 degC", 2); got != want {
			t.Errorf("%s mm2 carries %g A, want that of %s, %g A", metric, got, gauge, want)
		}
	}
}

// ampacity asks the codebook for a run's ampacity under the conditions it lies in.
func ampacity(t *testing.T, judged func(*testing.T, string) map[string]verdict.Verdict, size string, insulation float64, ambient string, grouped int) float64 {
	t.Helper()
	text := fmt.Sprintf(`
design "one run" {
  revision = "A"
}
site {
  place = "building"
}
battery "b" {
  nominal = "51.2 V"
}
controller "c" {
  charge_current_max = "1 A"
}
bank "house" {
  battery  = "b"
  series   = 1
  parallel = 1
}
charger "main" {
  controller = "c"
  bank       = "house"
  cable_run {
    size       = %q
    length     = "2 m"
    insulation = "%g degC"
    ambient    = %q
    method     = "conduit"
    grouped    = %d
  }
}
`, size, insulation, ambient, grouped)
	v := judged(t, text)["conductor_corrected|cable_run.charger.main|"]
	if len(v.Limits) != 1 || v.Limits[0].Value == nil {
		t.Fatalf("%s, %g degC, %s, %d: %s %s", size, insulation, ambient, grouped, v.Outcome, v.Message)
	}
	return *v.Limits[0].Value
}

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
			if got := ampacity(t, judged, "4/0 AWG", insulation, fmt.Sprintf("%g degC", at.degrees), 2); math.Abs(got-base*at.factor) > 1e-6*base {
				t.Errorf("%g degC insulation at %g degC: %g A, want %g x %g", insulation, at.degrees, got, base, at.factor)
			}
		}
	}
	for grouped, factor := range map[int]float64{1: 1, 3: 1, 4: 0.8, 6: 0.8, 7: 0.7, 9: 0.7, 10: 0.5, 20: 0.5, 21: 0.45, 30: 0.45, 31: 0.4, 40: 0.4, 41: 0.35, 200: 0.35} {
		if got := ampacity(t, judged, "10 AWG", 90, "30 degC", grouped); math.Abs(got-40*factor) > 1e-9 {
			t.Errorf("%d conductors: %g A, want 40 x %g", grouped, got, factor)
		}
	}
	for size, a := range closed {
		for i, insulation := range []float64{60, 75, 90} {
			if got := ampacity(t, judged, size, insulation, "30 degC", 2); math.Abs(got-a[i]) > 1e-9 {
				t.Errorf("%s at %g degC: %g A, want %g A", size, insulation, got, a[i])
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
