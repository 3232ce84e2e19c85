package design_test

import (
	"fmt"
	"io/fs"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"
	"github.com/rogpeppe/go-internal/txtar"

	"stringline/schema/design"
	"stringline/schema/source"
)

// archive reads a txtar file of testdata as a file tree.
func archive(t *testing.T, name string) fstest.MapFS {
	t.Helper()
	a, err := txtar.ParseFile("testdata/" + name)
	if err != nil {
		t.Fatal(err)
	}
	tree := fstest.MapFS{}
	for _, f := range a.Files {
		tree[f.Name] = &fstest.MapFile{Data: f.Data}
	}
	return tree
}

// shown gives problems as "line:column: message", with the nearest name.
func shown(ps source.Problems) []string {
	var lines []string
	for _, p := range ps {
		lines = append(lines, strings.TrimPrefix(p.Error(), "a.design.hcl:"))
	}
	return lines
}

func load(t *testing.T, text string, more ...fs.FS) *design.Design {
	t.Helper()
	var files fs.FS
	if len(more) > 0 {
		files = more[0]
	}
	return design.Load(design.Options{Files: files, Path: "a.design.hcl", Text: []byte(text)})
}

func TestSampleOfTheSpecification(t *testing.T) {
	files := archive(t, "sample.txtar")
	d := design.Load(design.Options{Files: files, Path: "huts/larch.design.hcl", Cache: new(design.PartsCache)})
	if len(d.Problems) > 0 {
		t.Fatalf("the sample has problems:\n%v", d.Problems)
	}
	if d.Name != "Larch Col hut" || d.Revision != "C" || d.File != "huts/larch.design.hcl" {
		t.Errorf("head: %q %q %q", d.Name, d.Revision, d.File)
	}
	if diff := cmp.Diff([]string{"us_2023"}, d.Codebooks); diff != "" {
		t.Errorf("codebooks (-want +got):\n%s", diff)
	}
	var ids []string
	var walk func(b *design.Block)
	walk = func(b *design.Block) {
		ids = append(ids, b.ID())
		for _, inner := range b.Blocks {
			walk(inner)
		}
	}
	for _, b := range d.Blocks {
		walk(b)
	}
	want := []string{
		"site",
		"bank.house", "bank.house.each", "protection.bank.house.each", "bank.house.main", "cable_run.bank.house", "protection.bank.house", "disconnect.bank.house",
		"charger.main", "charger.main.settings", "cable_run.charger.main", "protection.charger.main",
		"array.south", "string.south.a", "string.south.b", "protection.string.south.b", "cable_run.array.south", "disconnect.array.south",
		"ac_output.cabin", "load.lights", "load.pump", "supply.twelve", "charge_source.engine", "grounding",
		"reading.south-a-open", "waiver.practice.voltage_drop",
	}
	if diff := cmp.Diff(want, ids); diff != "" {
		t.Errorf("ids (-want +got):\n%s", diff)
	}
	parts := map[string][]string{}
	for kind, named := range d.Parts {
		for name := range named {
			parts[kind] = append(parts[kind], name)
		}
	}
	if len(parts["panel"]) != 2 || len(parts["controller"]) != 1 || len(parts["battery"]) != 1 || len(parts["inverter"]) != 1 || len(parts["converter"]) != 1 {
		t.Errorf("parts in use: %v", parts)
	}
	if len(d.Files) != 3 {
		t.Errorf("%d files were read, want 3", len(d.Files))
	}
	wantWaiver := design.Waiver{Rule: "practice.voltage_drop", On: []string{"cable_run.array.south"},
		Reason: "cable already buried; re-pull planned with the second array", ApprovedBy: "inspector's letter 14/26", Expires: "2027-04-01"}
	if len(d.Waivers) != 1 {
		t.Fatalf("%d waivers, want 1", len(d.Waivers))
	}
	got := *d.Waivers[0]
	got.OnAt, got.Block = nil, nil
	if diff := cmp.Diff(wantWaiver, got); diff != "" {
		t.Errorf("waiver (-want +got):\n%s", diff)
	}
}

func TestValuesOfTheSample(t *testing.T) {
	d := design.Load(design.Options{Files: archive(t, "sample.txtar"), Path: "huts/larch.design.hcl"})
	for _, c := range []struct {
		kind, name, inner, attribute string
		si                           float64
		unit                         string
		line                         int
	}{
		{"site", "", "", "coldest", 246.15, "degC", 11},
		{"site", "", "", "elevation", 1840, "m", 10},
		{"bank", "house", "", "parallel", 2, "", 20},
		{"bank", "house", "disconnect", "rating", 275, "A", 51},
		{"charger", "main", "settings", "temperature_compensation", 0, "mV/K", 69},
		{"charger", "main", "settings", "cold_charge_cutoff", 278.15, "degC", 70},
		{"array", "south", "cable_run", "size", 16e-6, "mm2", 110},
		{"array", "south", "", "losses", 0.08, "%", 95},
		{"load", "pump", "", "surge", 1900, "kW", 150},
		{"panel", "slate-410", "", "temp_voc", -0.0026, "%/K", 7},
		{"panel", "slate-410", "", "noct", 318.15, "degC", 10},
		{"panel", "dusk-380", "", "temp_voc", -0.111, "V/K", 23},
		{"panel", "dusk-380", "", "temp_isc", 0.0058, "mA/K", 24},
		{"panel", "dusk-380", "", "temp_pmax", -1.29, "W/K", 25},
		{"inverter", "moor-2000", "", "continuous", 2000, "VA", 44},
		{"battery", "fell-200", "bms", "charge_cutoff", 110, "A", 33},
	} {
		b := d.Find(c.kind, c.name)
		if b != nil && c.inner != "" {
			b = b.Child(c.inner)
		}
		if b == nil {
			t.Errorf("%s %s %s is not there", c.kind, c.name, c.inner)
			continue
		}
		v, ok := b.Value(c.attribute)
		if !ok || v.Bad {
			t.Errorf("%s %s: not read", b.ID(), c.attribute)
			continue
		}
		// Conversions are one multiplication and one addition: rounding alone.
		if diff := v.SI - c.si; diff > 1e-12 || diff < -1e-12 {
			t.Errorf("%s %s = %v, want %v", b.ID(), c.attribute, v.SI, c.si)
		}
		if v.Written.Symbol != c.unit {
			t.Errorf("%s %s is written in %q, want %q", b.ID(), c.attribute, v.Written.Symbol, c.unit)
		}
		if v.At.Start.Line != c.line {
			t.Errorf("%s %s stands in line %d, want %d", b.ID(), c.attribute, v.At.Start.Line, c.line)
		}
	}
	if v, _ := d.Find("charger", "main").Child("settings").Value("equalize"); v == nil || v.Yes {
		t.Error("equalize = false is not read as no")
	}
	s := d.Find("array", "south").Blocks[1]
	v, _ := s.Value("panels")
	var mixed []string
	for _, p := range v.Panels {
		mixed = append(mixed, p.Panel)
	}
	if diff := cmp.Diff([]string{"slate-410", "dusk-380"}, mixed); diff != "" {
		t.Errorf("panels of string b (-want +got):\n%s", diff)
	}
	if c := d.Refers(d.Find("charger", "main"), "controller"); c == nil || c.ID() != "controller.ridge-70" {
		t.Errorf("the charger's controller is %v", c)
	}
}

// Without the weather file, and without the parts, the sample deserves just
// the problems that follow from it.
func TestSampleWithoutItsFiles(t *testing.T) {
	files := archive(t, "sample.txtar")
	delete(files, "huts/larch-col.epw")
	delete(files, "parts/panels.parts.hcl")
	d := design.Load(design.Options{Files: files, Path: "huts/larch.design.hcl"})
	want := []string{
		`huts/larch.design.hcl:14:15: weather: reading "larch-col.epw": no such file`,
		`huts/larch.design.hcl:97:18: panels: there is no panel "slate-410"`,
		`huts/larch.design.hcl:101:16: panels: there is no panel "slate-410"`,
		`huts/larch.design.hcl:101:33: panels: there is no panel "dusk-380"`,
	}
	if diff := cmp.Diff(want, shown(d.Problems)); diff != "" {
		t.Errorf("problems (-want +got):\n%s", diff)
	}
	if p := d.Problems[1]; p.Block != "string.south.a" || p.Expected != "the name of a panel, of which there is none" {
		t.Errorf("problem 1: block %q, expected %q", p.Block, p.Expected)
	}
}

// At the bound a design is read, one block beyond it is refused at that block,
// wherever the blocks of the kind stand.
func TestMostBlocks(t *testing.T) {
	const head = "design \"d\" {}\n"
	banks := func(n int) string {
		var b strings.Builder
		for i := range n {
			fmt.Fprintf(&b, "bank \"b%d\" {\nbattery = \"x\"\nseries = 1\nparallel = 1\nmain {\nfuse {}\n}\neach {\nfuse {}\n}\n}\n", i)
		}
		return b.String()
	}
	size := func(d *design.Design) (found []string) {
		for _, p := range d.Problems {
			if p.Kind == "size" {
				found = append(found, p.Error())
			}
		}
		return found
	}
	if d := load(t, head+banks(250)); len(size(d)) > 0 || len(d.Blocks) != 250 {
		t.Errorf("500 fuses in 250 banks: %v, %d blocks", size(d), len(d.Blocks))
	}
	d := load(t, head+banks(251))
	want := []string{"a.design.hcl:2757:1: the design has more than 500 fuse blocks; none of it is judged"}
	if diff := cmp.Diff(want, size(d)); diff != "" || len(d.Blocks) > 0 || d.Head != nil {
		t.Errorf("502 fuses: %d blocks (-want +got):\n%s", len(d.Blocks), diff)
	}
}
