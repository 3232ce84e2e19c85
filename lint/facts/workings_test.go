package facts_test

import (
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint/facts"
	"stringline/schema/design"
	"testing/fstest"
)

func TestSays(t *testing.T) {
	s := load(t, hut)
	for id, want := range map[string]string{
		"string.south.a.voc_cold":                  "2 x 37.4 V x (1 + 0.26 %/K x 52 K), at -27 degC",
		"pv_input.main.1.voc_cold":                 "37.4 V x (1 + 0.26 %/K x 52 K) + 41 V x (1 + 0.28 %/K x 52 K), at -27 degC",
		"string.south.a.voc_hot":                   "2 x 37.4 V x (1 - 0.26 %/K x 34 K), at 59 degC",
		"string.south.a.cell_hot":                  "29 degC + (44 degC + 0 K - 20 degC) x 1000/800",
		"pv_input.main.1.isc_stc":                  "2 x string.south.a 13.9 A + string.south.b 13.9 A",
		"string.south.a.fault_current":             "13.9 A + 13.9 A + 0 A backfeed",
		"pv_input.main.1.voc_headroom":             "150 V - 89.4 V",
		"bank.house.charge_current_total":          "charger.main 60 A + charge_source.engine 40 A",
		"bank.house.charge_current_rated":          "charger.main 70 A + charge_source.engine 40 A",
		"bank.house.charge_current_accepted":       "2 x 90 A, management opens",
		"bank.house.short_circuit_current":         "2 x 3000 A",
		"charger.main.charge_current_limit":        "set to 60 A",
		"bank.house.voltage_max":                   "charge_source.engine charges at 28.6 V",
		"ac_output.cabin.current":                  "2000 W / (23 V x 90 %)",
		"supply.twelve.current":                    "12 V x 20 A / (18 V x 92 %)",
		"load.lights.current":                      "60 W / 21 V",
		"cable_run.load.lights.current":            "",
		"cable_run.array.south.voltage_drop_share": "1.53 V / 63.7 V",
		"cable_run.charger.main.resistance":        "2 x 2.5 m x 0.000949 ohm/m",
		"string.south.a.series_fuse_max":           "25 A of slate-410",
	} {
		if f, ok := s.Fact(id); ok && f.Says != want {
			t.Errorf("%s says %q, want %q", id, f.Says, want)
		} else if !ok && want != "" {
			t.Errorf("no fact %s", id)
		}
	}
	for id, f := range known(s) {
		for _, r := range f.Says {
			if r < ' ' || r > '~' {
				t.Errorf("%s says %q, which is not plain ASCII", id, f.Says)
				break
			}
		}
		if strings.Contains(f.Says, "%!") {
			t.Errorf("%s says %q", id, f.Says)
		}
	}
}

// The workings of a fact lead to the lines of the files below it.
func TestWorkLeadsToTheFiles(t *testing.T) {
	s := load(t, hut)
	w, ok := s.Work("array.south.voc_cold")
	if !ok {
		t.Fatal("no workings")
	}
	var path []string
	for len(w.Inputs) > 0 {
		path = append(path, w.Fact.ID)
		w = w.Inputs[0]
	}
	path = append(path, w.Fact.ID)
	want := []string{"array.south.voc_cold", "pv_input.main.1.voc_cold", "string.south.b.voc_cold", "panel.slate-410.voc"}
	if diff := cmp.Diff(want, path); diff != "" {
		t.Errorf("the way down, deciding first (-want +got):\n%s", diff)
	}
	if !w.At.Valid() || lineOf(hut, w.At.Start.Line) != `  voc                = "37.4 V"` {
		t.Errorf("%s is at %s: %q", w.Fact.ID, w.At, lineOf(hut, w.At.Start.Line))
	}

	var lines []string
	for _, at := range s.At("string.south.a.voc_cold") {
		lines = append(lines, strings.Join(strings.Fields(lineOf(hut, at.Start.Line)), " "))
	}
	want = []string{`voc = "37.4 V"`, `temp_voc = "-0.26 %/K"`, `coldest = "-27 degC"`}
	if diff := cmp.Diff(want, lines); diff != "" {
		t.Errorf("places below voc_cold (-want +got):\n%s", diff)
	}
	for id, header := range map[string]string{"pv_input.main.1": `array "south" {`, "charger.main": `charger "main" {`, "protection.bank.house.each": "    fuse {", "system": `design "Hut" {`} {
		at := s.At(id)
		if len(at) != 1 || lineOf(hut, at[0].Start.Line) != header {
			t.Errorf("%s stands at %v, want the line %q", id, at, header)
		}
	}
	if at := s.At("no.such.thing"); at != nil {
		t.Errorf("nothing stands at %v", at)
	}
}

func lineOf(text string, n int) string { return strings.Split(text, "\n")[n-1] }

// Attributes of a named part are the placed thing's own, and lead to the part.
func TestNamedParts(t *testing.T) {
	s := load(t, strings.Replace(hut, `      class      = "T"
      rating     = "200 A"
      voltage    = "125 V"
      interrupts = "20 kA"
      dc_rated   = true
`, "      fuse = \"t-200\"\n", 1)+`
fuse "t-200" {
  class      = "T"
  rating     = "200 A"
  voltage    = "125 V"
  interrupts = "20 kA"
  dc_rated   = true
}
`)
	if got := number(t, s, "protection.bank.house.interrupts"); got != 20000 {
		t.Errorf("it interrupts %v A", got)
	}
	if f := get(t, s, "protection.bank.house.kind"); f.Word != "fuse" {
		t.Errorf("it is a %q", f.Word)
	}
	if _, ok := s.Fact("protection.bank.house.fuse"); ok {
		t.Error("the name of its part is a fact")
	}
}

// A codebook's own questions are facts; one that is not answered is unknown.
func TestDeclaredAnswers(t *testing.T) {
	text := strings.Replace(hut, "bank \"house\" {\n", "bank \"house\" {\n  declared \"county\" {\n    ventilated = true\n    volume = \"2 m\"\n  }\n", 1)
	d := design.Load(design.Options{
		Files: fstest.MapFS{"a.design.hcl": {Data: []byte(text)}}, Path: "a.design.hcl",
		Declares: func(book string) (map[string][]design.Attribute, bool) {
			return map[string][]design.Attribute{"bank": {
				{Name: "ventilated", Form: design.YesNo, Means: "vents to the outside"},
				{Name: "volume", Form: design.Quantity, Unit: "m", Min: 0, Max: 10, Means: "size"},
				{Name: "doors", Form: design.Count, Min: 0, Max: 10, Means: "doors"},
			}}, book == "county"
		},
	})
	if len(d.Problems) > 0 {
		t.Fatal(d.Problems)
	}
	s := facts.New(d)
	if f := get(t, s, "bank.house.declared.county.ventilated"); !f.Known || !f.Yes || f.Unit != "yes_no" {
		t.Errorf("ventilated: %+v", f)
	}
	if f := get(t, s, "bank.house.declared.county.volume"); !f.Known || f.SI != 2 || f.Unit != "m" {
		t.Errorf("volume: %+v", f)
	}
	doors := get(t, s, "bank.house.declared.county.doors")
	if diff := cmp.Diff([]string{"bank.house.declared.county.doors"}, doors.Missing); doors.Known || diff != "" {
		t.Errorf("an unanswered question: %+v", doors)
	}
	bank, _ := s.Subject("bank.house")
	want := map[string]string{"ventilated": "bank.house.declared.county.ventilated", "volume": "bank.house.declared.county.volume"}
	if diff := cmp.Diff(want, bank.Declared("county")); diff != "" {
		t.Errorf("declared (-want +got):\n%s", diff)
	}
	if got := bank.Declared("other"); got != nil {
		t.Errorf("answers to another book: %v", got)
	}
	if at := s.At("bank.house.declared.county.ventilated"); len(at) != 1 {
		t.Errorf("it stands at %v", at)
	}
	if f, ok := s.Fact("panel.slate-410.declared.county"); ok {
		t.Errorf("half an id is a fact: %+v", f)
	}
}

// The structure changes with ids, links and answers, and not with values.
func TestStructure(t *testing.T) {
	base := load(t, hut).Structure()
	change := func(old, with string) string {
		s, _ := loose(strings.Replace(hut, old, with, 1))
		return s.Structure()
	}
	for _, same := range [][2]string{
		{`coldest   = "-27 degC"`, `coldest   = "-7 degC"`}, {`coldest   = "-27 degC"`, ``}, {`{ "slate-410" = 2 }`, `{ "slate-410" = 3 }`}, {`parallel = 2`, `parallel = 3`},
	} {
		if change(same[0], same[1]) != base {
			t.Errorf("a value changes the structure: %s", same[1])
		}
	}
	for _, other := range [][2]string{
		{`string "b"`, `string "c"`}, {`{ "slate-410" = 2 }`, `{ "dusk-380" = 2 }`}, {"    fuse {\n      rating = \"20 A\"\n    }\n", ""}, {"from  = \"supply.twelve\"", "from  = \"bank.house\""},
	} {
		if change(other[0], other[1]) == base {
			t.Errorf("the structure stays, though %q becomes %q", other[0], other[1])
		}
	}
}

func TestLinks(t *testing.T) {
	s := load(t, hut)
	for _, c := range []struct {
		id, link string
		want     []string
	}{
		{"string.south.b", "array", []string{"array.south"}},
		{"string.south.b", "pv_input", []string{"pv_input.main.1"}},
		{"string.south.b", "panels", []string{"panel.slate-410", "panel.dusk-380"}},
		{"array.south", "charger", []string{"charger.main"}},
		{"pv_input.main.1", "controller", []string{"controller.ridge-70"}},
		{"charger.main", "bank", []string{"bank.house"}},
		{"bank.house", "battery", []string{"battery.fell-200"}},
		{"bank.house", "disconnects", []string{"disconnect.bank.house"}},
		{"ac_output.cabin", "inverter", []string{"inverter.moor-2000"}},
		{"load.radio", "supplies", []string{"supply.twelve"}},
		{"load.radio", "bank", []string{"bank.house"}},
		{"load.radio", "banks", nil},
		{"load.fan", "chargers", []string{"charger.main"}},
		{"load.lights", "banks", []string{"bank.house"}},
		{"reading.a-open", "strings", []string{"string.south.a"}},
		{"protection.charger.main", "chargers", []string{"charger.main"}},
		{"protection.charger.main", "cable_runs", []string{"cable_run.charger.main"}},
		{"protection.bank.house", "cable_runs", []string{"cable_run.bank.house"}},
		{"protection.bank.house", "disconnects", []string{"disconnect.bank.house"}},
		{"protection.bank.house.each", "cable_runs", nil},
		{"protection.bank.house.each", "banks", []string{"bank.house"}},
		{"cable_run.string.south.b", "protections", []string{"protection.string.south.b"}},
		{"disconnect.array.south", "arrays", []string{"array.south"}},
	} {
		about, ok := s.Subject(c.id)
		if !ok {
			t.Errorf("no subject %s", c.id)
			continue
		}
		var got []string
		for _, to := range about.Linked(c.link) {
			got = append(got, to.ID())
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("%s %s: %v, want %v", c.id, c.link, got, c.want)
		}
		if _, ok := about.Collection().Link(c.link); !ok {
			t.Errorf("%s is no link of %s", c.link, about.Collection().Name)
		}
	}
}

// Every link that is no list leads to one subject; every link leads where the
// table says.
func TestLinksFollowTheTable(t *testing.T) {
	s := load(t, hut)
	for _, c := range facts.Collections() {
		for _, about := range s.Subjects(c.Name) {
			for _, l := range c.Links {
				to := about.Linked(l.Name)
				if !l.Many && len(to) != 1 {
					t.Errorf("%s %s leads to %d subjects", about.ID(), l.Name, len(to))
				}
				for _, other := range to {
					if other.Collection().Name != l.To {
						t.Errorf("%s %s leads to %s", about.ID(), l.Name, other.ID())
					}
				}
			}
		}
		if c.Single && len(s.Subjects(c.Name)) != 1 {
			t.Errorf("there are %d of %s", len(s.Subjects(c.Name)), c.Name)
		}
	}
}
