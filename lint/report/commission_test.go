package report

import (
	"bytes"
	"os"
	"regexp"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"
	"github.com/santhosh-tekuri/jsonschema/v6"

	"stringline/lint"
	"stringline/lint/commission"
	"stringline/lint/facts"
	"stringline/lint/verdict"
	"stringline/schema/design"
)

const commissionSchemaFile = "../../schema/commission.schema.json"

// cabin adds to the small shed what makes a plan speak: a lamp, a switch, a
// reading outside its band, one too high for the controller in the cold, and one
// of which nobody knows what was due, for the battery states no floor.
const cabin = small + `
load "lamp" {
  from        = "bank.house"
  power       = "20 W"
  voltage_min = "21 V"
  voltage_max = "30 V"
  fuse {
    rating = "10 A"
  }
}

reading "left" {
  title            = "left of the door"
  of               = "string.south.a.voc"
  value            = "140.1 V"
  taken            = "2026-09-12"
  cell_temperature = "47 degC"
  irradiance       = "820 W/m2"
}

reading "batteries" {
  of    = "bank.house.each.voltage"
  value = "26.4 V"
}

reading "lamp" {
  of    = "load.lamp.voltage"
  value = "20.4 V"
}
`

// modelled gives the panel of the small shed what its curve needs.
var modelled = strings.NewReplacer(`  temp_voc  = "-0.26 %/K"`, "  temp_voc  = \"-0.26 %/K\"\n  temp_isc = \"0.05 %/K\"\n  cells = 54\n  technology = \"mono_si\"")

// planOf lays out a design's commissioning, judged by the verdicts.
func planOf(t *testing.T, text string, celsius, light *float64, verdicts ...verdict.Verdict) *commission.Plan {
	t.Helper()
	d := design.Load(design.Options{Files: fstest.MapFS{}, Path: "shed.design.hcl", Text: []byte(text)})
	if len(d.Problems) > 0 {
		t.Fatal(d.Problems)
	}
	r := &lint.DesignResult{File: "shed.design.hcl", Name: d.Name, Revision: d.Revision, Digest: "sha256:00", System: facts.New(d), Verdicts: verdicts, Books: []string{"limits", "us_2023"}}
	c := commission.Conditions{Irradiance: light, Date: "2026-05-02", Books: []lint.BookInUse{{Name: "limits", Version: "0.1.0"}, {Name: "us_2023", Version: "0.2.0", Edition: "2023"}}}
	if celsius != nil {
		c.CellTemperature = ptr(*celsius + 273.15)
	}
	return commission.Of(r, c)
}

func planText(t *testing.T, p *commission.Plan, opts Page) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := Commission(&b, p, opts); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

func planJSON(t *testing.T, p *commission.Plan) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := CommissionJSON(&b, p, "0.1.0", 1); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// samplePlans are plans of every standing.
func samplePlans(t *testing.T) map[string]*commission.Plan {
	cold := hut().Verdicts
	return map[string]*commission.Plan{
		"stopped":   planOf(t, modelled.Replace(cabin), ptr(41.0), ptr(820.0), cold...),
		"unlit":     planOf(t, modelled.Replace(cabin), nil, nil, verdict.Verdict{Rule: "limits.x", About: "bank.house", Outcome: verdict.Meets, Grade: verdict.Stop}),
		"unmodeled": planOf(t, cabin, ptr(41.0), ptr(300.0)),
		"odd":       odd(planOf(t, modelled.Replace(cabin), ptr(41.0), nil, oddities()[0].Verdicts...)),
		"unread":    commission.Of(&oddities()[1], commission.Conditions{}),
	}
}

// odd puts texts that try to write on the terminal, or to be read as commands of
// a CI log or as markup, wherever a plan carries a text of somebody else's. The
// language refuses control characters; a codebook and a path may bring them.
func odd(p *commission.Plan) *commission.Plan {
	const evil = "x \x1b[31m\u202e\u200b\u009b\n::error::<script>alert(1)</script> & \"q\" \x07"
	p.Head.Design, p.Head.Revision, p.Head.File, p.Head.Workshop = evil, evil, evil, evil
	p.Head.Waivers = append(p.Head.Waivers, commission.Waiver{Rule: evil, About: evil, Reason: evil, ApprovedBy: evil, Expires: evil})
	p.Standing.Findings = append(p.Standing.Findings, commission.Finding{Grade: "fix", Verdict: "void", Rule: evil, About: evil, Which: evil, Says: evil, Missing: []string{evil}})
	for i := range p.Sections {
		for j := range p.Sections[i].Lines {
			l := &p.Sections[i].Lines[j]
			l.About, l.Says, l.Because, l.With = l.About+evil, evil, evil, []string{evil, evil}
			for k := range l.Expect {
				e := &l.Expect[k]
				e.Name, e.Says = evil, evil
				if e.Word != "" {
					e.Word = evil
				}
			}
			for k := range l.Readings {
				l.Readings[k].Title, l.Readings[k].Because, l.Readings[k].Missing = evil, evil, []string{evil}
			}
		}
	}
	return p
}

func TestCommissionText(t *testing.T) {
	plans := samplePlans(t)
	golden(t, "commission.txt", planText(t, plans["stopped"], Page{}))
	golden(t, "commission-40.txt", planText(t, plans["stopped"], Page{Width: 40}))
	golden(t, "commission-100.txt", planText(t, plans["stopped"], Page{Width: 100}))
	golden(t, "commission-unlit.txt", planText(t, plans["unlit"], Page{}))
	golden(t, "commission.json", planJSON(t, plans["stopped"]))
}

// TestCommissionPage holds the layout for every plan at every width: no line too
// wide but for a path or a digest that has no place to end, none that ends in a
// space, no control character, and color that adds nothing.
func TestCommissionPage(t *testing.T) {
	for name, p := range samplePlans(t) {
		for _, width := range []int{40, 56, 80, 100} {
			for _, line := range strings.Split(string(planText(t, p, Page{Width: width})), "\n") {
				if n := columns(line); n >= width && strings.Contains(strings.TrimSpace(line[min(len(line), 9):]), " ") && name != "odd" && name != "unread" {
					t.Errorf("%s at %d columns: a line takes %d: %s", name, width, n, line)
				}
				if strings.TrimRight(line, " ") != line {
					t.Errorf("%s: line ends in a space: %q", name, line)
				}
				if Escape(line) != line {
					t.Errorf("%s: a line is not escaped: %q", name, line)
				}
			}
		}
		painted := string(planText(t, p, Page{Style: marks{}}))
		bare := regexp.MustCompile(`<(stop|fix|supply) ((?s:.*?))>`).ReplaceAllString(painted, "$2")
		if name != "odd" {
			if diff := cmp.Diff(string(planText(t, p, Page{})), bare); diff != "" {
				t.Errorf("%s: paint changes the text:\n%s", name, diff)
			}
		}
	}
}

// TestCommissionSaysFirst: what keeps the system from being energized, and what
// lies outside its band, stand before anything that is done.
func TestCommissionSaysFirst(t *testing.T) {
	text := string(planText(t, samplePlans(t)["stopped"], Page{}))
	at := 0
	for _, want := range []string{
		"NOT TO BE ENERGIZED: 2 stops found or unproven.", "3 readings recorded in the design: 0 in band, 2 outside", "OUTSIDE ITS BAND", "170.1 V on the coldest morning", "20.4 V is below 21.0 V", "UNPROVEN", "discharge_voltage_min",
		"OPEN FINDINGS", "STOP     limits.cold_voltage on pv_input.main.1", "Hazards", "1  BEFORE ANYTHING IS ENERGIZED", "not measured", "NOT TO BE ENERGIZED",
	} {
		i := strings.Index(text[at:], want)
		if i < 0 {
			t.Fatalf("no %q behind what comes before it in:\n%s", want, text)
		}
		at += i
	}
}

func TestCommissionSchemaIsFresh(t *testing.T) {
	schema, err := CommissionSchema()
	if err != nil {
		t.Fatal(err)
	}
	if *update {
		if err := os.WriteFile(commissionSchemaFile, schema, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	committed, err := os.ReadFile(commissionSchemaFile)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(committed), string(schema)); diff != "" {
		t.Errorf("schema/commission.schema.json is stale (-committed +made): run with -update\n%s", diff)
	}
}

// TestCommissionJSONFitsItsSchema has a validator that knows nothing of our types
// read every plan, and shows that the schema can tell a wrong document.
func TestCommissionJSONFitsItsSchema(t *testing.T) {
	text, err := os.ReadFile(commissionSchemaFile)
	if err != nil {
		t.Fatal(err)
	}
	doc, err := jsonschema.UnmarshalJSON(bytes.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	compiler := jsonschema.NewCompiler()
	if err := compiler.AddResource("commission.schema.json", doc); err != nil {
		t.Fatal(err)
	}
	schema, err := compiler.Compile("commission.schema.json")
	if err != nil {
		t.Fatal(err)
	}
	valid := func(text string) error {
		doc, err := jsonschema.UnmarshalJSON(strings.NewReader(text))
		if err != nil {
			t.Fatal(err)
		}
		return schema.Validate(doc)
	}
	plans := samplePlans(t)
	for name, p := range plans {
		text := string(planJSON(t, p))
		if err := valid(text); err != nil {
			t.Errorf("%s: %v", name, err)
		}
		if strings.ContainsAny(text, "\x1b\x07\u202e\u200b\u009b") {
			t.Errorf("%s: a control character stands in the JSON", name)
		}
	}
	sample := string(planJSON(t, plans["stopped"]))
	for _, change := range [][2]string{
		{`"state": "not_measured"`, `"state": "met"`},
		{`"kind": "measure"`, `"kind": "tick"`},
		{`"key": "dead"`, `"key": "alive"`},
		{`"relation": "at_most"`, `"relation": "under"`},
		{`"readings": []`, `"readings": null`},
		{`"energize": false`, `"energize": "no"`},
		{`"due": 0,`, ``},
	} {
		changed := strings.Replace(sample, change[0], change[1], 1)
		if changed == sample {
			t.Fatalf("the sample does not hold %s", change[0])
		}
		if valid(changed) == nil {
			t.Errorf("the schema accepts %s", change[1])
		}
	}
}
