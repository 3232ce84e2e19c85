package schedule_test

import (
	"bytes"
	"encoding/csv"
	"math"
	"path"
	"slices"
	"strings"
	"testing"

	"stringline/lint"
	"stringline/lint/report/schedule"
)

// TestGolden pins the three schedules of two examples.
func TestGolden(t *testing.T) {
	for _, name := range []string{"boat/boat", "ranch/ranch"} {
		d := example(t, name+".design.hcl")
		var parts, conductors, labels bytes.Buffer
		for _, err := range []error{schedule.PartsCSV(&parts, d.System), schedule.ConductorsCSV(&conductors, d), schedule.LabelsCSV(&labels, d)} {
			if err != nil {
				t.Fatal(err)
			}
		}
		golden(t, path.Base(name)+"-parts.csv", parts.Bytes())
		golden(t, path.Base(name)+"-conductors.csv", conductors.Bytes())
		golden(t, path.Base(name)+"-labels.csv", labels.Bytes())
	}
}

// once holds that every subject of some collections is among ids once.
func once(t *testing.T, d *lint.DesignResult, ids []string, collections ...string) {
	t.Helper()
	count := map[string]int{}
	for _, id := range ids {
		count[id]++
	}
	for _, c := range collections {
		for _, s := range d.System.Subjects(c) {
			if count[s.ID()] != 1 {
				t.Errorf("%s: %s stands %d times", d.File, s.ID(), count[s.ID()])
			}
		}
	}
}

// TestEachOnce counts from the design: every part, device, conductor and load is
// in the parts list once, every run in the wire schedule.
func TestEachOnce(t *testing.T) {
	for _, d := range examples(t) {
		byKind := map[string][]string{}
		for _, p := range schedule.Parts(d.System) {
			kind := p.Kind
			if kind == "fuse" || kind == "breaker" {
				kind = "protection"
			}
			byKind[kind] = append(byKind[kind], p.UsedIn...)
		}
		once(t, &d, byKind["protection"], "protections")
		once(t, &d, byKind["switch"], "disconnects")
		once(t, &d, byKind["conductor"], "cable_runs")
		once(t, &d, byKind["load"], "loads")
		once(t, &d, byKind["charge source"], "charge_sources")
		once(t, &d, byKind["controller"], "chargers")
		once(t, &d, byKind["battery"], "banks")
		once(t, &d, byKind["inverter"], "ac_outputs")
		once(t, &d, byKind["converter"], "supplies")
		for _, s := range d.System.Subjects("strings") {
			if !slices.Contains(byKind["panel"], s.ID()) {
				t.Errorf("%s: no panel of %s in the parts list", d.File, s.ID())
			}
		}
		var runs []string
		for _, c := range schedule.Conductors(&d) {
			runs = append(runs, c.ID)
		}
		once(t, &d, runs, "cable_runs")
	}
}

func part(t *testing.T, d *lint.DesignResult, kind, name string) schedule.Part {
	t.Helper()
	for _, p := range schedule.Parts(d.System) {
		if p.Kind == kind && p.Name == name {
			return p
		}
	}
	t.Fatalf("%s: no %s %q in the parts list", d.File, kind, name)
	return schedule.Part{}
}

// TestPartsByHand holds quantities of the examples to figures that were counted by
// hand in their files.
func TestPartsByHand(t *testing.T) {
	boat := example(t, "boat/boat.design.hcl")
	clinic := example(t, "clinic/clinic.design.hcl")
	for _, c := range []struct {
		d          *lint.DesignResult
		kind, name string
		want       float64
		unit       string
	}{
		{boat, "panel", "lark-120", 2, ""},
		{boat, "battery", "moss-110", 3, ""},
		{boat, "fuse", "stud-100", 3, ""}, // one on each battery
		{boat, "fuse", "t-15", 3, ""},     // fridge, lights, water pump
		{boat, "breaker", "lock-30", 1, ""},
		// both ways: array 6 m, fridge 3 m, lights 4 m, water pump 3 m
		{boat, "conductor", "tinned-4", 2 * (6 + 3 + 4 + 3), "m"},
		{boat, "conductor", "tinned-35", 2 * (3 + 1.2), "m"}, // engine, galley
		{boat, "conductor", "tinned-70", 2 * 0.6, "m"},
		{clinic, "panel", "acacia-450", 2 * 3 * 2, ""}, // two roofs, 3 in series, 2 in parallel
		{clinic, "battery", "delta-100", 4, ""},
		// strings 4 m each, two on each of two roofs; supply 1 m, fridge 4 m
		{clinic, "conductor", "veld-6", 2 * (2*2*4 + 1 + 4), "m"},
	} {
		p := part(t, c.d, c.kind, c.name)
		if !p.Quantity.Known || math.Abs(p.Quantity.Number-c.want) > 1e-9*c.want || p.Quantity.Unit != c.unit {
			t.Errorf("%s: %s %s: %+v, by hand %g %s", c.d.File, c.kind, c.name, p.Quantity, c.want, c.unit)
		}
		if !p.Sheet.Valid() {
			t.Errorf("%s: %s %s does not say where its data sheet is", c.d.File, c.kind, c.name)
		}
	}
}

// TestConductors holds the wire schedule to the design, and the ampacity by the
// code to the code's own tables.
func TestConductors(t *testing.T) {
	ranch := example(t, "ranch/ranch.design.hcl")
	rows := map[string]schedule.Conductor{}
	for _, c := range schedule.Conductors(ranch) {
		rows[c.ID] = c
	}
	for id, ends := range map[string][2]string{
		"cable_run.string.south.a":       {"string.south.a", "array.south"},
		"cable_run.array.south":          {"array.south", "pv_input.main.1"},
		"cable_run.charger.main":         {"charger.main", "bank.house"},
		"cable_run.bank.house":           {"bank.house", "busbar of bank.house"},
		"cable_run.ac_output.shop":       {"ac_output.shop", "bank.house"},
		"cable_run.supply.twelve":        {"supply.twelve", "bank.house"},
		"cable_run.charge_source.engine": {"charge_source.engine", "bank.house"},
		"cable_run.load.lights":          {"load.lights", "bank.house"},
	} {
		if c := rows[id]; c.From != ends[0] || c.To != ends[1] {
			t.Errorf("%s joins %q and %q", id, c.From, c.To)
		}
	}
	main := rows["cable_run.charger.main"]
	// 4 AWG copper of 90 degC: 95 A by NEC table 310.16, x 0.96 in air of 31 to
	// 35 degC by table 310.15(B)(1) (tables as the project's notes have them, read
	// in public copies).
	if want := 95 * 0.96; !main.Allowed.Known || math.Abs(main.Allowed.Number-want) > 1e-6 {
		t.Errorf("ampacity by the code: %+v, by the tables %g A", main.Allowed, want)
	}
	if !strings.Contains(main.Allowed.Text, "us_2023.conductor_corrected") {
		t.Errorf("the ampacity does not name its rule: %s", main.Allowed.Text)
	}
	if main.Size.Text != "4 AWG" || math.Abs(main.Size.Number-21.15) > 0.01 { // ASTM B258: 21.15 mm2
		t.Errorf("size: %+v", main.Size)
	}
	if main.Device != "protection.charger.main" || main.Protection.Number != 80 || main.Ampacity.Number != 90 || main.Current.Number != 60 {
		t.Errorf("the charger's run: %+v", main)
	}
	if strings := rows["cable_run.string.south.a"]; strings.Alike.Number != 2 || strings.Bought.Number != 2*2*6 || strings.Grounding.Text != "12 AWG" {
		t.Errorf("the strings' run: %+v", strings)
	}
	for id, c := range rows {
		for _, e := range c.Cells() {
			for _, fact := range e.Facts {
				f, ok := ranch.System.Fact(fact)
				if v, isNumber := f.Value().(float64); !ok || isNumber && e.Measured && v != e.Number {
					t.Errorf("%s: %s reads %v, the fact is %v", id, fact, e.Number, f.Value())
				}
			}
		}
	}
	boat := schedule.Conductors(example(t, "boat/boat.design.hcl"))
	for _, c := range boat {
		if strings.HasPrefix(c.ID, "cable_run.load.lights") && c.To != "charger.roof.load_terminals" {
			t.Errorf("lights go to %q", c.To)
		}
		if c.Allowed.Known || c.Allowed.Text != "no code in force" {
			t.Errorf("%s: no code is in force, yet its ampacity is %+v", c.ID, c.Allowed)
		}
	}
}

// TestUnknown: what the design does not tell stays an empty entry with what to
// supply, and a sum keeps what is known as its least.
func TestUnknown(t *testing.T) {
	d := shed(t, `
design "Silent" {}

battery "cell" {
  nominal = "12.8 V"
}

bank "house" {
  battery  = "cell"
  series   = 1
  parallel = 1
}

load "lamp" {
  from = "bank.house"
  cable_run {
    size   = "4 mm2"
    length = "3 m"
  }
  fuse {
    class = "T"
  }
}

load "pump" {
  from = "bank.house"
  cable_run {
    size = "4 mm2"
  }
}
`)
	for _, p := range schedule.Parts(d.System) {
		switch p.Kind {
		case "conductor":
			if p.Quantity.Known || p.Quantity.Text != "at least 6.00 m" || p.Quantity.Machine() != "" || !slices.Equal(p.Quantity.Missing, []string{"cable_run.load.pump.length"}) {
				t.Errorf("conductor: %+v", p.Quantity)
			}
		case "fuse":
			if i := slices.IndexFunc(p.Ratings, func(r schedule.Rating) bool { return r.Name == "rating" }); i < 0 || p.Ratings[i].Value.Text != "_____ A" {
				t.Errorf("fuse: %+v", p.Ratings)
			}
		}
	}
	for _, c := range schedule.Conductors(d) {
		if c.Ampacity.Text != "_____ A" || c.Insulation.Text != "_____ degC" || c.Ampacity.Machine() != "" {
			t.Errorf("%s: %+v %+v", c.ID, c.Ampacity, c.Insulation)
		}
	}
}

// TestCSV holds the files to RFC 4180 by a second reader, and to the head line.
func TestCSV(t *testing.T) {
	d := shed(t, `
design "=1+1 <script>alert(1)</script>" {}

panel "p" {
  voc       = "40 V"
  connector = "=HYPERLINK(\"x\"), \"quoted\" & <b>; אבג"
}

controller "c" {
  kind = "mppt"
}

battery "cell" {
  nominal = "12.8 V"
}

bank "house" {
  battery  = "cell"
  series   = 1
  parallel = 1
}

charger "main" {
  controller = "c"
  bank       = "house"
}

array "roof" {
  charger = "main"
  string "a" {
    panels = { "p" = 2 }
    cable_run {
      size      = "4 mm2"
      length    = "3 m"
    }
  }
}
`)
	for name, c := range map[string]struct {
		write   func(*bytes.Buffer) error
		columns []schedule.Column
		rows    int
	}{
		"parts":      {func(b *bytes.Buffer) error { return schedule.PartsCSV(b, d.System) }, schedule.PartColumns(), len(schedule.Parts(d.System))},
		"conductors": {func(b *bytes.Buffer) error { return schedule.ConductorsCSV(b, d) }, schedule.ConductorColumns(), 1},
		"labels":     {func(b *bytes.Buffer) error { return schedule.LabelsCSV(b, d) }, schedule.LabelColumns(), len(schedule.Labels(d))},
	} {
		var b bytes.Buffer
		if err := c.write(&b); err != nil {
			t.Fatal(err)
		}
		text := b.String()
		if strings.Count(text, "\n") != strings.Count(text, "\r\n") || !strings.HasSuffix(text, "\r\n") {
			t.Errorf("%s: lines do not end with CRLF", name)
		}
		reader := csv.NewReader(strings.NewReader(text))
		rows, err := reader.ReadAll() // refuses rows of unlike length
		if err != nil {
			t.Fatalf("%s: %v", name, err)
		}
		if len(rows) != c.rows+1 {
			t.Errorf("%s: %d rows, want %d and a head", name, len(rows), c.rows)
		}
		for i, column := range c.columns {
			if rows[0][i] != column.Key {
				t.Errorf("%s: column %d is %q, want %q", name, i, rows[0][i], column.Key)
			}
		}
		for _, row := range rows {
			for _, cell := range row {
				if cell != "" && strings.ContainsRune("=+@", rune(cell[0])) {
					t.Errorf("%s: a spreadsheet would run %q", name, cell)
				}
			}
		}
		if name == "parts" && !strings.Contains(strings.Join(rows[1], " "), `=HYPERLINK("x"), "quoted" & <b>; אבג`) {
			t.Errorf("the connector does not read as it was written: %q", rows[1])
		}
	}
}
