package report

import (
	"bytes"
	"encoding/csv"
	"strings"
	"testing"
	"testing/fstest"

	"stringline/lint"
	"stringline/lint/facts"
	"stringline/lint/verdict"
	"stringline/schema/design"
)

// A small design with one thing unknown: the panel's temp_voc. Check value A2
// of the trade's worked examples lies in it once that is given.
const small = `
design "Small shed" {}

site {
  coldest = "-27 degC"
  hottest = "29 degC"
}

panel "slate-410" {
  voc       = "37.4 V"
  isc       = "13.95 A"
  vmp       = "31.4 V"
  imp       = "13.06 A"
  pmax      = "410 W"
  temp_voc  = "-0.26 %/K"
}

controller "ridge-70" {
  pv_voltage_max = "150 V"
}

battery "fell-200" {
  nominal = "25.6 V"
}

bank "house" {
  battery  = "fell-200"
  series   = 1
  parallel = 2
}

charger "main" {
  controller = "ridge-70"
  bank       = "house"
}

array "south" {
  charger = "main"
  string "a" {
    panels = { "slate-410" = 4 }
  }
}
`

func loaded(t *testing.T, text string) *lint.DesignResult {
	t.Helper()
	d := design.Load(design.Options{Files: fstest.MapFS{}, Path: "shed.design.hcl", Text: []byte(text)})
	if len(d.Problems) > 0 {
		t.Fatal(d.Problems)
	}
	return &lint.DesignResult{File: "shed.design.hcl", Name: d.Name, System: facts.New(d), Verdicts: []verdict.Verdict{{
		Rule: "limits.cold_voltage", About: "pv_input.main.1", Outcome: verdict.Breaks, Grade: verdict.Stop,
		Is: &verdict.Measured{ID: "pv_input.main.1.voc_cold"}, Headroom: ptr(-0.132),
	}}}
}

func worksheet(t *testing.T, d *lint.DesignResult, id string, opts Page) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := Worksheet(&b, d, id, opts); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func TestWorksheet(t *testing.T) {
	known := loaded(t, small)
	golden(t, "worksheet.txt", worksheet(t, known, "pv_input.main.1.voc_cold", Page{}))
	golden(t, "worksheet-40.txt", worksheet(t, known, "pv_input.main.1.voc_cold", Page{Width: 40}))
	unknown := loaded(t, strings.Replace(small, "temp_voc", "# temp_voc", 1))
	golden(t, "worksheet-unknown.txt", worksheet(t, unknown, "pv_input.main.1.voc_cold", Page{}))
	if err := Worksheet(&bytes.Buffer{}, known, "pv_input.main.1.voc_warm", Page{}); err == nil {
		t.Error("a fact that does not exist has a worksheet")
	}
	var b bytes.Buffer
	if err := WorksheetJSON(&b, unknown, "pv_input.main.1.voc_cold"); err != nil {
		t.Fatal(err)
	}
	golden(t, "worksheet-unknown.json", b.Bytes())
}

func TestFactsTable(t *testing.T) {
	var b bytes.Buffer
	if err := Facts(&b, loaded(t, strings.Replace(small, "temp_voc", "# temp_voc", 1)), Page{}); err != nil {
		t.Fatal(err)
	}
	// The golden file holds a few subjects, so that it turns with the layout
	// and not with every fact that is added.
	var sections []string
	for _, section := range strings.Split(b.String(), "\n\n") {
		head, _, _ := strings.Cut(section, "\n")
		switch strings.Fields(head)[0] {
		case "SMALL", "site", "grounding", "panel.slate-410", "controller.ridge-70":
			sections = append(sections, section)
		}
	}
	golden(t, "facts.txt", []byte(strings.Join(sections, "\n\n")+"\n"))
	if !strings.Contains(b.String(), "\n  voc_cold ") {
		t.Error("no computed fact in the table")
	}
	for _, line := range strings.Split(b.String(), "\n") {
		if columns(line) >= 80 {
			t.Errorf("a line takes %d columns: %s", columns(line), line)
		}
	}
}

// Where a method has no answer the reason is said, and nothing that is given is
// asked for.
func TestNoAnswer(t *testing.T) {
	const why = "system voltage: 30 V is within -8 to +10 % of none of 12, 24, 36 and 48 V"
	d := loaded(t, strings.Replace(small, `"25.6 V"`, `"30 V"`, 1))
	var b bytes.Buffer
	if err := Facts(&b, d, Page{}); err != nil {
		t.Fatal(err)
	}
	flat := strings.Join(strings.Fields(b.String()), " ")
	if !strings.Contains(flat, "system_voltage _____ V no answer: "+why) || strings.Contains(flat, "supply nominal") {
		t.Errorf("facts:\n%s", b.String())
	}
	sheet := string(worksheet(t, d, "bank.house.system_voltage", Page{}))
	if strings.Contains(sheet, "Supply") || strings.Count(strings.Join(strings.Fields(sheet), " "), why) != 2 || !strings.Contains(sheet, "\nBecause  ") {
		t.Errorf("worksheet:\n%s", sheet)
	}
	for _, form := range []struct {
		shows string
		v     verdict.Verdict
	}{
		{"because  no curve fits", verdict.Verdict{Outcome: verdict.Unproven, Grade: verdict.Stop, Message: "m", Because: "no curve fits"}},
		{"found    _____ V   no curve fits", verdict.Verdict{Outcome: verdict.Unproven, Grade: verdict.Stop, Message: "m", Because: "no curve fits", Relation: "at_most",
			Is: &verdict.Measured{ID: "a.b.c", Unit: "V", Says: "no curve fits"}, Limits: []verdict.Measured{{ID: "a.b.d", Unit: "V", Value: ptr(3.0)}}}},
	} {
		p := newPage(Page{})
		p.item(1, &form.v)
		if text := p.take(); !strings.Contains(text, form.shows) || strings.Contains(text, "supply") || strings.Count(text, "no curve fits") != 1 {
			t.Errorf("item:\n%s", text)
		}
	}
}

func TestFactsCSV(t *testing.T) {
	d := loaded(t, small)
	var b bytes.Buffer
	if err := FactsCSV(&b, d.System); err != nil {
		t.Fatal(err)
	}
	rows, err := csv.NewReader(&b).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	found := map[string][]string{}
	for _, row := range rows {
		found[row[0]] = row
	}
	for id, want := range map[string]string{
		"pv_input.main.1.voc_cold": "169.82592 V", // check value A2
		"panel.slate-410.temp_voc": "-0.26 %/K",
		"site.coldest":             "-27 degC",
		"panel.slate-410.noct":     " degC", // unknown: an empty cell
	} {
		row, ok := found[id]
		if !ok {
			t.Errorf("no row for %s", id)
			continue
		}
		if got := row[1] + " " + row[2]; got != want {
			t.Errorf("%s: got %q, want %q", id, got, want)
		}
	}
	if row := found["panel.slate-410.noct"]; len(row) == 7 && row[4] != "panel.slate-410.noct" {
		t.Errorf("an unknown attribute misses %q", row[4])
	}
	if len(rows)-1 != len(FactNames(d.System)) {
		t.Errorf("%d rows for %d facts", len(rows)-1, len(FactNames(d.System)))
	}
}

// TestRefer: worksheets name lines where formulas name facts.
func TestRefer(t *testing.T) {
	in := func(id string) *facts.Work { return &facts.Work{Entry: &facts.Entry{}, Fact: facts.Fact{ID: id}} }
	lines := []workLine{
		{number: 1, work: in("panel.x.voc")}, {number: 2, work: in("panel.x.temp_voc")},
		{number: 3, work: in("site.coldest")}, {number: 4, work: in("panel.y.voc")},
		{number: 5, work: in("charger.main.settings.absorption")},
	}
	for _, c := range []struct {
		formula string
		inputs  []int
		want    string
	}{
		{"4 x voc x (1 + temp_voc x (coldest - 25 degC))", []int{1, 2, 3}, "4 x line 1 x (1 + line 2 x (line 3 - 25 degC))"},
		{"sum of voc.", []int{1, 4}, "sum of voc (lines 1, 4)."},
		{"absorption or settings.absorption", []int{5}, "line 5 or line 5"},
		{"voc_cold less vocal", []int{1}, "voc_cold less vocal"},
		{"", []int{1}, ""},
	} {
		l := workLine{work: &facts.Work{Entry: &facts.Entry{Formula: c.formula}}, inputs: c.inputs}
		if got := refer(&l, lines); got != c.want {
			t.Errorf("refer(%q) = %q, want %q", c.formula, got, c.want)
		}
	}
}

func TestMentions(t *testing.T) {
	for formula, want := range map[string]bool{
		"1.25 x cable_run.array.south.current":                                    true,
		"cable_run.array.south.current_operating":                                 false,
		"x.cable_run.array.south.current":                                         false,
		"largest(cable_run.array.south.current, 3 A)":                             true,
		"a cable_run.array.south.current-x and nothing":                           false,
		"cable_run.array.south.current_operating + cable_run.array.south.current": true,
	} {
		if got := mentions(&verdict.Measured{Formula: formula}, "cable_run.array.south.current"); got != want {
			t.Errorf("mentions(%q) = %v", formula, got)
		}
	}
}

// A figure that rests on a clear sky says so beside it.
func TestClearSkyIsTold(t *testing.T) {
	for id, want := range map[string]string{"charger.main.clipped_energy": "share (under a clear sky)", "site.sky": "share (assumed)"} {
		row := factRow{means: "share", given: true, fact: facts.Fact{ID: id, Known: true, Assumed: []string{"site.albedo", "site.sky"}}}
		if got, _ := factNote(&row); got != want {
			t.Errorf("%s: %q, want %q", id, got, want)
		}
	}
	row := factRow{means: "share", given: true, fact: facts.Fact{ID: "x.y", Known: true, Assumed: []string{"site.albedo"}}}
	if got, _ := factNote(&row); got != "share" {
		t.Errorf("without: %q", got)
	}
}
