package facts_test

import (
	"bytes"
	"errors"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint/facts"
)

// Where the physics refuses, the fact is unknown and says why; all that it reads
// is given, so nothing is missing. What rests on it says whose answer there is
// none of.
func TestRefusals(t *testing.T) {
	change := func(old, with string) string { return strings.Replace(hut, old, with, 1) }
	for _, c := range []struct{ name, design, id, note, above, says string }{
		{"a size of no table", change(`size   = "25 mm2"`, `size   = "26 mm2"`), "cable_run.charger.main.resistance_per_length", "26 mm2 is not a size", "cable_run.charger.main.loss", "cable_run.charger.main.resistance_per_length: "},
		{"a bank of no class", change(`nominal               = "25.6 V"`, `nominal               = "30 V"`), "bank.house.system_voltage", "30 V", "charger.main.full_power_nominal", "bank.house.system_voltage: "},
		{"a sheet that contradicts itself", change(`vmp                = "31.4 V"`, `vmp                = "37.0 V"`), "panel.slate-410.model", "residual", "string.south.a.vmp_hot", "panel.slate-410.model: "},
		{"tinned aluminum", change(`size   = "25 mm2"`, "size   = \"25 mm2\"\n    material = \"Al\"\n    tinned = true"), "cable_run.charger.main.resistance_per_length", "tinned aluminum", "cable_run.charger.main.resistance", "cable_run.charger.main.resistance_per_length: "},
	} {
		t.Run(c.name, func(t *testing.T) {
			s := load(t, c.design)
			w, ok := s.Work(c.id)
			if !ok || w.Fact.Known || !strings.Contains(w.Note, c.note) || w.Note != w.Fact.Because || len(w.Fact.Missing) > 0 {
				t.Errorf("%s: known %v, note %q, because %q, missing %v", c.id, w.Fact.Known, w.Note, w.Fact.Because, w.Fact.Missing)
			}
			if f := get(t, s, c.above); f.Known || f.Because != c.says+w.Note || len(f.Missing) > 0 {
				t.Errorf("%s, above it: %+v", c.above, f)
			}
			sound(t, s)
		})
	}
	if f := get(t, load(t, change(`size   = "25 mm2"`, `size   = "26 mm2"`)), "cable_run.charger.main.path_drop"); f.Known {
		t.Errorf("the path of a run without a resistance loses %v", f.Value())
	}
}

// A maker's resistance wins over the tables. It is stated at 20 degC; IEC 60028
// carries copper to 75 degC with 0.00393 /K.
func TestMakersResistance(t *testing.T) {
	for material, coefficient := range map[string]float64{"Cu": 0.00393, "Al": 0.00403} {
		s := load(t, strings.Replace(hut, `size   = "25 mm2"`, "size   = \"26 mm2\"\n    material = \""+material+"\"\n    resistance = \"0.7 ohm/km\"", 1))
		want := 2 * 2.5 * 0.0007 * (1 + coefficient*55)
		if got := number(t, s, "cable_run.charger.main.resistance"); !near(got, want, 1e-8) {
			t.Errorf("%s: %v ohm, want %v", material, got, want)
		}
		if got := number(t, s, "cable_run.charger.main.maker_resistance"); !near(got, 0.0007, 1e-9) {
			t.Errorf("the maker's own figure is %v ohm/m", got)
		}
	}
}

// Conductors in parallel for each pole share the current; an area is one's.
func TestPerPole(t *testing.T) {
	s := load(t, strings.Replace(hut, `size   = "25 mm2"`, "size   = \"25 mm2\"\n    per_pole = 2", 1))
	one, two := number(t, load(t, hut), "cable_run.charger.main.resistance"), number(t, s, "cable_run.charger.main.resistance")
	if !near(two, one/2, 1e-8) || number(t, s, "cable_run.charger.main.area") != 25 {
		t.Errorf("one conductor %v ohm, two %v ohm", one, two)
	}
}

// Tinned strands have a resistance of their own: IEC 60228 class 5, 16 mm2, 1.24
// ohm/km against 1.21 (transcribed).
func TestTinned(t *testing.T) {
	s := load(t, strings.Replace(hut, `size   = "16 mm2"`, "size   = \"16 mm2\"\n    tinned = true", 1))
	if got, want := number(t, s, "cable_run.array.south.resistance_per_length"), 1.24e-3*(1+0.00393*55); !near(got, want, 1e-8) {
		t.Errorf("%v ohm/m, want %v", got, want)
	}
	if f := get(t, s, "cable_run.array.south.tinned"); !f.Yes || len(f.Assumed) > 0 {
		t.Errorf("tinned: %+v", f)
	}
	if f := get(t, load(t, hut), "cable_run.array.south.tinned"); f.Yes || len(f.Assumed) != 1 {
		t.Errorf("silent: %+v", f)
	}
}

// What current can do at an inverter hangs on whether it can charge; in a string
// that is alone on its input, on the controller's backfeed.
func TestTwoWay(t *testing.T) {
	const protected = "\n  breaker {\n    rating = \"100 A\"\n  }\n"
	inverter := strings.Replace(hut, "  low_cutoff = \"23 V\"\n", "  low_cutoff = \"23 V\"\n"+protected, 1)
	for charge, want := range map[string]bool{"0 A": false, "30 A": true} {
		s := load(t, strings.Replace(inverter, `ac_voltage = "230 V"`, "ac_voltage = \"230 V\"\n  charge_current_max = \""+charge+"\"", 1))
		if f := get(t, s, "protection.ac_output.cabin.two_way"); !f.Known || f.Yes != want || len(f.Assumed) > 0 {
			t.Errorf("an inverter that charges with %s: %+v", charge, f)
		}
	}
	lone := func(backfeed string) string {
		text := example(t, "", "COUNT", "2")
		text = strings.Replace(text, `pv_backfeed_max    = "0 A"`, backfeed, 1)
		return strings.Replace(text, "    parallel = 1\n", "    parallel = 1\n    fuse {\n      rating = \"15 A\"\n    }\n", 1)
	}
	for backfeed, want := range map[string]bool{`pv_backfeed_max = "0 A"`: false, `pv_backfeed_max = "2 A"`: true} {
		if f := get(t, load(t, lone(backfeed)), "protection.string.r.s.two_way"); !f.Known || f.Yes != want {
			t.Errorf("a lone string with %s: %+v", backfeed, f)
		}
	}
	if f := get(t, load(t, lone("")), "protection.string.r.s.two_way"); f.Known {
		t.Errorf("a lone string, backfeed unknown: %+v", f)
	}
	if f := get(t, load(t, strings.Replace(lone(""), "parallel = 1", "parallel = 2", 1)), "protection.string.r.s.two_way"); !f.Known || !f.Yes {
		t.Errorf("one of two like strings, backfeed unknown: %+v", f)
	}
}

// A design may leave out almost anything. What is always there is there.
func TestAlmostEmptyDesigns(t *testing.T) {
	empty := load(t, `design "Empty" {}`)
	for id, missing := range map[string]string{"site.coldest": "site.coldest", "grounding.dc_bonds": "grounding.dc_bonds"} {
		if f := get(t, empty, id); f.Known || f.Missing[0] != missing {
			t.Errorf("%s: %+v", id, f)
		}
	}
	if f := get(t, empty, "site.albedo"); !f.Known || f.SI != 0.2 || f.Assumed[0] != "site.albedo" {
		t.Errorf("albedo: %+v", f)
	}
	if got := number(t, empty, "system.pv_voltage_max"); got != 0 {
		t.Errorf("no arrays give %v V", got)
	}
	sound(t, empty)

	const bank = `
design "Bank alone" {}
battery "b" {
  nominal = "12 V"
}
bank "k" {
  battery  = "b"
  series   = 1
  parallel = 1
}
`
	alone := load(t, bank)
	if f := get(t, alone, "bank.k.voltage_max"); f.Known || len(f.Missing) > 0 || f.Because != "nothing charges this bank" {
		t.Errorf("a bank that nothing charges: %+v", f)
	}
	if got := number(t, alone, "bank.k.discharge_current_continuous"); got != 0 {
		t.Errorf("a bank that feeds nothing gives %v A", got)
	}
	idle := load(t, bank+"controller \"c\" {}\ncharger \"m\" {\n  controller = \"c\"\n  bank = \"k\"\n}\n")
	if f := get(t, idle, "charger.m.voc_headroom"); f.Known || len(f.Missing) > 0 || f.Because != "there is none to take the smallest of" {
		t.Errorf("a charger without an array: %+v", f)
	}
	if got := number(t, idle, "charger.m.pv_power"); got != 0 {
		t.Errorf("a charger without an array has %v W", got)
	}
	sound(t, idle)
}

// Of two blocks of one name the first counts, and sums know that there is more.
func TestTwiceTheSameName(t *testing.T) {
	s, problems := loose(hut + "\ncharge_source \"engine\" {\n  bank = \"house\"\n  charge_current = \"200 A\"\n  charge_voltage = \"32 V\"\n  together = true\n}\n")
	if len(problems) == 0 {
		t.Fatal("two blocks of one name are no problem")
	}
	if n := len(s.Subjects("charge_sources")); n != 1 {
		t.Errorf("there are %d charge sources", n)
	}
	if f := get(t, s, "bank.house.charge_current_total"); f.Known {
		t.Errorf("the total is %v", f.Value())
	}
	sound(t, s)
}

// What could not be read may have been anything that counts.
func TestUnreadBlocks(t *testing.T) {
	for name, c := range map[string]struct{ design, id, missing string }{
		"a second string of one name": {strings.Replace(hut, `string "b"`, `string "a"`, 1), "pv_input.main.1.isc_stc", "string.south.a"},
		"a string without a name":     {strings.Replace(hut, `string "b"`, `string`, 1), "cable_run.array.south.current", "array.south"},
		"a misspelt keyword":          {hut + "\nchargr \"second\" {\n}\n", "bank.house.charge_current_total", "design"},
		"a name with a capital":       {hut + "\ncharge_source \"Shore\" {\n  bank = \"house\"\n}\n", "bank.house.charge_current_total", "design"},
		"a line that does not parse":  {hut + "\ncharge_source \"shore\" {\n  bank\n}\n", "bank.house.voltage_max", "charge_source.shore.bank"},
		"what comes later":            {hut + "\nwind \"mill\" {\n}\n", "bank.house.charge_current_rated", "design"},
	} {
		s, problems := loose(c.design)
		if f := get(t, s, c.id); len(problems) == 0 || f.Known || !slices.Contains(f.Missing, c.missing) {
			t.Errorf("%s: %d problems, %s known %v, missing %v", name, len(problems), c.id, f.Known, f.Missing)
		}
		sound(t, s)
	}
}

// A reading is in the unit of what was read.
func TestReadings(t *testing.T) {
	for value, unit := range map[string]string{"72.1 V": "V", "9.3 A": "A", "1.2 kW": "W"} {
		of := map[string]string{"V": "voc", "A": "isc", "W": "power"}[unit]
		s := load(t, strings.NewReplacer(`value = "72.1 V"`, `value = "`+value+`"`, "string.south.a.voc", "string.south.a."+of).Replace(hut))
		if f := get(t, s, "reading.a-open.value"); !f.Known || f.Unit != unit {
			t.Errorf("%s: %+v", value, f)
		}
	}
	s, problems := loose(strings.Replace(hut, `of    = "string.south.a.voc"`, `of    = "string.south.z.voc"`, 1))
	if len(problems) == 0 || len(s.Subjects("readings")) != 0 {
		t.Errorf("a reading of nothing: %d problems, %d readings", len(problems), len(s.Subjects("readings")))
	}
}

// Attributes of a part that no one owns are facts; the block of a subject is to
// be had.
func TestSubjects(t *testing.T) {
	s := load(t, hut)
	if s.Design().Name != "Hut" {
		t.Errorf("the design is %q", s.Design().Name)
	}
	panel, ok := s.Subject("panel.slate-410")
	if !ok || panel.Block().Name != "slate-410" || panel.ID() != "panel.slate-410" {
		t.Fatalf("panel: %+v", panel)
	}
	if in, _ := s.Subject("pv_input.main.1"); in.Block() != nil {
		t.Error("a controller input has a block")
	}
	if c, _ := facts.CollectionOf("batteries"); c != nil {
		e, _ := c.Entry("chemistry")
		if !slices.Contains(e.Words(), "lifepo4") {
			t.Errorf("words of chemistry: %v", e.Words())
		}
		if e, _ := c.Entry("short_circuit"); e.Words() != nil {
			t.Errorf("words of a current: %v", e.Words())
		}
	}
	if _, ok := facts.CollectionOf("turbines"); ok {
		t.Error("there are turbines")
	}
	var order []string
	for _, about := range s.Subjects("strings") {
		order = append(order, about.ID())
	}
	if diff := cmp.Diff([]string{"string.south.a", "string.south.b"}, order); diff != "" {
		t.Errorf("file order (-want +got):\n%s", diff)
	}
}

func TestWriteDocument(t *testing.T) {
	s := load(t, hut)
	var b bytes.Buffer
	if err := s.WriteDocument(&b); err != nil || !bytes.Equal(b.Bytes(), s.Document()) {
		t.Errorf("writing: %v", err)
	}
	if err := s.WriteDocument(broken{}); !errors.Is(err, errBroken) {
		t.Errorf("writing to what is broken: %v", err)
	}
}

type broken struct{}

var errBroken = errors.New("broken")

func (broken) Write([]byte) (int, error) { return 0, errBroken }
