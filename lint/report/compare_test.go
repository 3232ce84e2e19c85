package report

import (
	"bytes"
	"os"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/santhosh-tekuri/jsonschema/v6"

	"stringline/lint"
	"stringline/lint/compare"
	"stringline/lint/facts"
	"stringline/lint/verdict"
	"stringline/schema/source"
)

const compareSchemaFile = "../../schema/compare.schema.json"

// comparison is a sample with one of everything: the hut with 3 panels in series
// where 4 were, and 4 again. 127.4 V and 169.8 V are check values A2.
func comparison() *compare.Comparison {
	h := hut()
	find := func(rule string) *verdict.Verdict {
		for i := range h.Verdicts {
			if h.Verdicts[i].Rule == rule {
				return &h.Verdicts[i]
			}
		}
		return nil
	}
	broken := find("limits.cold_voltage")
	met := *broken
	met.Outcome, met.Headroom, met.Spare = verdict.Meets, ptr(0.150871), &verdict.Spare{Value: 22.63056, Unit: "V"}
	met.Is = &verdict.Measured{ID: broken.Is.ID, Unit: "V", Value: ptr(127.36944)}
	drop := find("practice.voltage_drop")
	less := *drop
	less.Is = &verdict.Measured{ID: drop.Is.ID, Unit: "%", Value: ptr(1.43)}
	less.Headroom = ptr(0.523)
	less.Limits = []verdict.Measured{{ID: "param.practice.voltage_drop_max", Unit: "%", Value: ptr(3.0)}}
	pwm := find("limits.pwm_window")
	charge := find("limits.charge_current")
	more := *charge
	more.Is = &verdict.Measured{ID: charge.Is.ID, Unit: "A", Value: ptr(50.0)}
	more.Headroom = ptr(20.0 / 70)
	was := lint.BookInUse{Name: "practice", Version: "0.1.0", Digest: "sha256:22", Parameters: []lint.ParameterInUse{{Name: "voltage_drop_max", Unit: "%", Value: ptr(3.0), Text: "3 %"}}}
	now := lint.BookInUse{Name: "practice", Version: "0.2.0", Digest: "sha256:23", Parameters: []lint.ParameterInUse{{Name: "voltage_drop_max", Unit: "%", Value: ptr(2.0), Text: "2 %", SetAt: at("workshop.hcl", 8, 24, 5)}}}
	const file = "hut.design.hcl"
	number := func(id string, si float64, unit string) facts.Fact {
		return facts.Fact{ID: id, Unit: unit, Known: true, SI: si}
	}
	return &compare.Comparison{
		Version: "0.1.0", Date: "2026-05-02", Exit: 1,
		Was: compare.Side{Label: "main", Commit: "4f2a91c0d1e2f3a4b5c6d7e8f90a1b2c3d4e5f60"}, Now: compare.Side{Label: "the files as they are"},
		Books: []compare.BookChange{
			{Name: "county", Was: &lint.BookInUse{Name: "county", Version: "1.0.0", Rules: make([]lint.RuleInUse, 3)}},
			{Name: "iec", Now: &lint.BookInUse{Name: "iec", Version: "0.3.0", Rules: make([]lint.RuleInUse, 12)}},
			{Name: "practice", Was: &was, Now: &now,
				Parameters: []compare.ParameterChange{{Name: "voltage_drop_max", Was: &was.Parameters[0], Now: &now.Parameters[0]}, {Name: "old", Was: &was.Parameters[0]}},
				Grades:     []compare.GradeChange{{Rule: "practice.take_off", Was: verdict.Fix, Now: verdict.Advise, At: at("workshop.hcl", 12, 1, 9)}},
				RulesNew:   []string{"practice.lamp"}, RulesGone: []string{"practice.bell"}},
		},
		Designs: []compare.Design{
			{State: compare.Changed, File: file, WasFile: file, Name: h.Name, WasName: h.Name, Revision: "C", WasRevision: "B",
				Renamed: []compare.Rename{{Was: "charger.old", Now: "charger.main", At: at(file, 31, 1, 14)}},
				Changes: []compare.Change{
					{Kind: compare.ValueSet, About: "string.south.a", Attribute: "panels", Was: "3 x slate-410", Now: "4 x slate-410", WasAt: at(file, 44, 12, 4), At: at(file, 44, 12, 4)},
					{Kind: compare.ValueNew, About: "string.south.a", Attribute: "parallel", Now: "2", At: at(file, 45, 12, 1)},
					{Kind: compare.ValueGone, About: "bank.house", Attribute: "hottest", Was: "25 degC", WasAt: at(file, 18, 12, 9)},
					{Kind: compare.BlockNew, About: "load.radio\x1b[31m", Values: 4, At: at(file, 80, 1, 9)},
					{Kind: compare.BlockGone, About: "load.pump", Values: 1, WasAt: at(file, 82, 1, 9)},
					{Kind: compare.PartNew, About: "panel.slate-410", Values: 9, At: at("parts/p.parts.hcl", 1, 1, 9)},
					{Kind: compare.PartGone, About: "panel.dusk-335", Values: 9, WasAt: at("parts/p.parts.hcl", 20, 1, 9)},
					{Kind: compare.FileOther, About: "site", Attribute: "weather", Was: "a.epw", Now: "a.epw", WasAt: source.Range{File: "a.epw"}, At: source.Range{File: "a.epw"}},
					{Kind: compare.WaiverNew, About: "practice.take_off on bank.house", Now: "until 2027-04-01: moved in spring", At: at(file, 90, 1, 26)},
					{Kind: compare.WaiverGone, About: "limits.x on bank.house", Was: "until 2026-04-01: | <b>then</b>", WasAt: at(file, 95, 1, 26)},
				},
				Turns: []compare.Turn{
					{Was: &met, Now: broken, Direction: compare.Worse},
					{Now: find("limits.bank_charge"), Direction: compare.Worse, Why: "new here"},
					{Was: &met, Now: find("practice.take_off"), Direction: compare.Turned, Why: "departs from the rule now, with a waiver"},
					{Was: &less, Now: drop, Direction: compare.Lost},
					{Was: charge, Now: &more, Direction: compare.Won},
					{Was: broken, Now: pwm, Direction: compare.Better},
					{Was: broken, Direction: compare.Better, Why: "gone"},
				},
				Facts: []compare.Fact{
					{ID: "pv_input.main.1.voc_cold", WasID: "pv_input.old.1.voc_cold", Was: number("pv_input.old.1.voc_cold", 127.36944, "V"), Now: number("pv_input.main.1.voc_cold", 169.82592, "V"), Causes: []string{"string.south.a"}, Judged: true},
					{ID: "bank.house.reserve", WasID: "bank.house.reserve", Was: number("bank.house.reserve", 3600, "h"), Now: facts.Fact{ID: "bank.house.reserve", Unit: "h", Missing: []string{"bank.house.coldest"}, AtLeast: ptr(1800.0)}, Causes: []string{"bank.house"}},
					{ID: "charger.main.monthly", WasID: "charger.old.monthly",
						Was: facts.Fact{Unit: "Wh", Kind: facts.Series, Known: true, List: make([]float64, 20), Over: make([]float64, 20)},
						Now: facts.Fact{Unit: "Wh", Kind: facts.Series, Known: true, List: append(make([]float64, 19), 3600), Over: make([]float64, 20)}, Causes: []string{"string.south.a"}},
					{ID: "site.levels", WasID: "site.levels", Was: facts.Fact{Unit: "V", Kind: facts.List, Known: true, List: []float64{12, 24}}, Now: facts.Fact{Unit: "V", Kind: facts.List, Known: true, List: []float64{12}}},
					{ID: "site.place", WasID: "site.place", Was: facts.Fact{Unit: "word", Kind: facts.Word, Known: true, Word: "building"}, Now: facts.Fact{Unit: "word", Kind: facts.Word, Known: true, Word: "boat"}, Attribute: true},
				}},
			{State: compare.Gone, WasFile: "old.design.hcl", WasName: "Old hut"},
			{State: compare.New, File: "new.design.hcl", Name: "New hut", Problems: source.Problems{{Kind: "conflict", Message: "unresolved merge conflict", At: at("new.design.hcl", 3, 1, 7)}}},
			{State: compare.Same, File: "same.design.hcl", WasFile: "same.design.hcl", Name: "Same", WasName: "Same"},
		},
		Summary: compare.Summary{Designs: 4, Changed: 1, New: 1, Gone: 1, Worse: 2, Better: 2, Turned: 1, Lost: 1, Won: 1, Held: 3, Came: 4, Left: 5, Facts: 5},
	}
}

func TestCompareText(t *testing.T) {
	for name, width := range map[string]int{"compare.txt": 80, "compare-40.txt": 40, "compare-100.txt": 100} {
		var b bytes.Buffer
		if err := Compare(&b, comparison(), CompareOptions{Page: Page{Width: width}}); err != nil {
			t.Fatal(err)
		}
		golden(t, name, b.Bytes())
		if strings.ContainsRune(b.String(), '\x1b') {
			t.Errorf("%s: an escape sequence from the design got through", name)
		}
		for line := range strings.Lines(b.String()) {
			line = strings.TrimSuffix(line, "\n")
			if strings.HasSuffix(line, " ") {
				t.Errorf("%s: %q ends in a space", name, line)
			}
			if n := columns(line); n >= width && strings.Contains(strings.TrimSpace(line), " ") && width >= 80 {
				t.Errorf("%s: %q takes %d columns", name, line, n)
			}
		}
	}
}

func TestCompareMarkdown(t *testing.T) {
	var b bytes.Buffer
	if err := CompareMarkdown(&b, comparison(), false); err != nil {
		t.Fatal(err)
	}
	golden(t, "compare.md", b.Bytes())
	if strings.Contains(b.String(), "<b>") && !strings.Contains(b.String(), `\<b\>`) {
		t.Error("a tag of the design got through")
	}
	for line := range strings.Lines(b.String()) { // every row of a table has its table's cells
		if strings.HasPrefix(line, "| ") && strings.Count(strings.ReplaceAll(line, `\|`, ""), "|") < 3 {
			t.Errorf("a row that is none: %q", line)
		}
	}
}

func TestCompareSchemaIsFresh(t *testing.T) {
	schema, err := CompareSchema()
	if err != nil {
		t.Fatal(err)
	}
	if *update {
		if err := os.WriteFile(compareSchemaFile, schema, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	committed, err := os.ReadFile(compareSchemaFile)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(committed), string(schema)); diff != "" {
		t.Errorf("schema/compare.schema.json is stale (-committed +made): run with -update\n%s", diff)
	}
}

// TestCompareJSON puts the document to a validator of JSON Schema, draft 2020-12,
// that knows nothing of our types.
func TestCompareJSON(t *testing.T) {
	var b bytes.Buffer
	if err := CompareJSON(&b, comparison()); err != nil {
		t.Fatal(err)
	}
	golden(t, "compare.json", b.Bytes())
	schema, err := jsonschema.NewCompiler().Compile(compareSchemaFile)
	if err != nil {
		t.Fatal(err)
	}
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(b.Bytes()))
	if err != nil {
		t.Fatal(err)
	}
	if err := schema.Validate(doc); err != nil {
		t.Error(err)
	}
	bad := bytes.Replace(b.Bytes(), []byte(`"direction": "worse"`), []byte(`"direction": "sideways"`), 1)
	if doc, err = jsonschema.UnmarshalJSON(bytes.NewReader(bad)); err != nil {
		t.Fatal(err)
	}
	if schema.Validate(doc) == nil {
		t.Error("a word from no list is accepted")
	}
}

func TestCompareSaysWhatToMakeOfIt(t *testing.T) {
	c := &compare.Comparison{Designs: []compare.Design{{State: compare.Same}}, Summary: compare.Summary{Designs: 1}}
	if got, _ := comparisonLine(c); got != "Nothing moved." {
		t.Errorf("nothing moved: %q", got)
	}
	c.Summary.Changed = 1
	if got, _ := comparisonLine(c); got != "Nothing got worse." {
		t.Errorf("nothing worse: %q", got)
	}
	c.Exit = 2
	if got, with := comparisonLine(c); !strings.HasPrefix(got, "NOT COMPARED IN FULL") || with != inkFix {
		t.Errorf("unread: %q", got)
	}
}
