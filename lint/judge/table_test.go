package judge

import (
	"math"
	"strings"
	"testing"

	"stringline/schema/source"
)

func readTestTable(t *testing.T, text string) *table {
	t.Helper()
	got, problems := readTable(source.NewFile("data/t.json", []byte(text)), "t", []string{"nec"})
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return got
}

// Rows of NEC Table 310.16 (copper, 30 degC) and of the ambient correction of
// 310.15(B)(1), public transcriptions.
const (
	ampacity = `{"title": "ampacity", "source": "nec", "status": "transcribed", "unit": "A",
		"axes": [{"name": "area", "unit": "mm2", "match": "exact"}, {"name": "insulation", "unit": "degC", "match": "down_to"}],
		"rows": [["14 AWG", 60, 15], ["14 AWG", 75, 20], ["14 AWG", 90, 25],
			["10 AWG", 60, 30], ["10 AWG", 75, 35], ["10 AWG", 90, 40],
			["4/0 AWG", 60, 195], ["4/0 AWG", 75, 230], ["4/0 AWG", 90, 260]]}`
	ambient = `{"title": "ambient", "source": "nec", "status": "transcribed", "unit": "",
		"axes": [{"name": "ambient", "unit": "degC", "match": "up_to"}, {"name": "insulation", "unit": "degC", "match": "down_to"}],
		"rows": [[30, 60, 1], [30, 90, 1], [35, 60, 0.91], [35, 90, 0.96], [40, 60, 0.82], [40, 90, 0.91], [45, 60, 0.71], [45, 90, 0.87],
			[50, 60, 0.58], [50, 90, 0.82], [60, 60, null], [60, 90, 0.71]]}`
	// NEC Table 690.7(A): between two rows the colder one counts.
	cold = `{"title": "cold", "source": "nec", "status": "transcribed", "unit": "",
		"axes": [{"name": "coldest", "unit": "degC", "match": "down_to"}],
		"rows": [[25, 1], [20, 1.02], [0, 1.10], [-5, 1.12], [-20, 1.18], [-25, 1.20], [-40, 1.25]]}`
)

func kelvin(c float64) cell { return cell{si: c + 273.15} }

func awg(n float64) cell {
	d := 0.000127 * math.Pow(92, (36-n)/39) // ASTM B258, in m
	return cell{si: math.Pi / 4 * d * d}
}

func TestTables(t *testing.T) {
	sizes, corrections, colds := readTestTable(t, ampacity), readTestTable(t, ambient), readTestTable(t, cold)
	for _, test := range []struct {
		name  string
		table *table
		at    []cell
		want  float64
		wrong string
	}{
		{"10 AWG, 90 degC", sizes, []cell{awg(10), kelvin(90)}, 40, ""},
		{"4/0 AWG, 75 degC", sizes, []cell{awg(-3), kelvin(75)}, 230, ""},
		{"insulation between two columns takes the lower one", sizes, []cell{awg(10), kelvin(85)}, 35, ""},
		{"below every column", sizes, []cell{awg(10), kelvin(59)}, 0, `no row for insulation 59.0 degC: it goes from 60.0 degC to 90.0 degC`},
		{"a size that is not in it", sizes, []cell{awg(8), kelvin(90)}, 0, `no row for area`},
		{"exactly on a row", corrections, []cell{kelvin(45), kelvin(90)}, 0.87, ""},
		{"just above a row the hotter one counts", corrections, []cell{kelvin(45.1), kelvin(90)}, 0.82, ""},
		{"below the first row, the first", corrections, []cell{kelvin(-10), kelvin(90)}, 1, ""},
		{"beyond the last", corrections, []cell{kelvin(60.1), kelvin(90)}, 0, "no row for ambient 60.1 degC"},
		{"a row without a value", corrections, []cell{kelvin(55), kelvin(60)}, 0, "gives no value for ambient 55.0 degC, insulation 60.0 degC"},
		{"-20 degC", colds, []cell{kelvin(-20)}, 1.18, ""},
		{"-20.1 degC takes the colder row", colds, []cell{kelvin(-20.1)}, 1.20, ""},
		{"below -40 degC the table ends", colds, []cell{kelvin(-40.1)}, 0, "no row for coldest"},
	} {
		t.Run(test.name, func(t *testing.T) {
			got, err := test.table.lookup(test.at)
			switch {
			case test.wrong != "":
				if err == nil || !strings.Contains(err.Error(), test.wrong) {
					t.Errorf("%v, %v; want an error with %q", got.si, err, test.wrong)
				}
			case err != nil:
				t.Error(err)
			case math.Abs(got.si-test.want) > 1e-12:
				t.Errorf("%v, want %v", got.si, test.want)
			}
		})
	}
	// Published study notes: 10 AWG, 90 degC column, at 45 degC: 40 x 0.87 = 34.8 A.
	size, _ := sizes.lookup([]cell{awg(10), kelvin(90)})
	factor, _ := corrections.lookup([]cell{kelvin(45), kelvin(90)})
	if got := size.si * factor.si; math.Abs(got-34.8) > 1e-9 {
		t.Errorf("%v A, want 34.8 A", got)
	}
}

func TestInterpolate(t *testing.T) {
	plane := readTestTable(t, `{"title": "a plane", "source": "nec", "status": "read", "unit": "A",
		"axes": [{"name": "x", "unit": "m", "match": "up_to"}, {"name": "y", "unit": "", "match": "up_to"}, {"name": "kind", "unit": "word", "match": "exact"}],
		"rows": [[0, 0, "a", 0], [0, 1, "a", 10], [2, 0, "a", 20], [2, 1, "a", 30], [0, 0, "b", 7], [2, 0, "b", 7], [2, 1, "b", 7], [0, 1, "b", 7]]}`)
	for _, test := range []struct {
		x, y float64
		kind string
		want float64
		fits bool
	}{
		{0, 0, "a", 0, true}, {1, 0, "a", 10, true}, {1, 0.5, "a", 15, true}, {2, 1, "a", 30, true}, {0.3, 0.9, "b", 7, true},
		{2.1, 0, "a", 0, false}, {1, -0.1, "a", 0, false}, {1, 1, "c", 0, false},
	} {
		got, err := plane.interpolate([]cell{{si: test.x}, {si: test.y}, {word: test.kind}})
		if (err == nil) != test.fits || test.fits && math.Abs(got-test.want) > 1e-12 {
			t.Errorf("%v, %v, %q: %v, %v; want %v", test.x, test.y, test.kind, got, err, test.want)
		}
	}
}

func TestTableProblems(t *testing.T) {
	const sound = `{"title": "t", "source": "nec", "status": "read", "unit": "A", "axes": [{"name": "x", "unit": "V", "match": "exact"}], "rows": [[1, 2]]}`
	for _, test := range []struct{ name, old, new, want string }{
		{"sound", "", "", ""},
		{"no title", `"title": "t"`, `"title": ""`, "the table has no title"},
		{"a status that is none", `"read"`, `"heard"`, `status is one of read, transcribed, from memory, not "heard"`},
		{"a source that is none", `"nec"`, `"nce"`, `source "nce" is no source of the codebook`},
		{"a unit that is none", `"unit": "A"`, `"unit": "amp"`, `unit "amp" is not known`},
		{"an axis' unit", `"unit": "V"`, `"unit": "volt"`, `axis "x": unit "volt" is not known`},
		{"a match that is none", `"exact"`, `"nearest"`, `axis "x": match is one of up_to, down_to, exact, not "nearest"`},
		{"no rows", `[[1, 2]]`, `[]`, "a table has 1 to 10000 rows, not 0"},
		{"a short row", `[[1, 2]]`, `[[1]]`, "row 1: 1 cells, where 1 axes and a value are 2"},
		{"a row twice", `[[1, 2]]`, `[[1, 2], [1, 3]]`, "row 2 repeats the axis values of an earlier row"},
		{"another dimension", `[[1, 2]]`, `[["1 A", 2]]`, "row 1: x: "},
		{"more behind its end", `]]}`, `]]} {}`, "there is more behind its end"},
		{"a number beyond float64", `[[1, 2]]`, `[[1, 1e999]]`, "row 1: value: 1e999 is not a number"},
		{"nothing", sound, "", "reading the table: EOF"},
	} {
		t.Run(test.name, func(t *testing.T) {
			_, problems := readTable(source.NewFile("t.json", []byte(strings.Replace(sound, test.old, test.new, 1))), "t", []string{"nec"})
			got := problems.Error()
			if test.want == "" && got != "" || !strings.Contains(got, test.want) {
				t.Errorf("%q, want %q", got, test.want)
			}
			for _, p := range problems {
				if !p.At.Valid() {
					t.Errorf("no place: %v", p)
				}
			}
		})
	}
}
