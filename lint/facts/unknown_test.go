package facts_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint/facts"
)

// without takes lines out of a design, each named by what it holds; it must be
// there.
func without(t testing.TB, text string, lines ...string) string {
	t.Helper()
	for _, line := range lines {
		i := strings.Index(text, line)
		if i < 0 {
			t.Fatalf("no line %q in the design", line)
		}
		start := strings.LastIndexByte(text[:i], '\n') + 1
		end := i + strings.IndexByte(text[i:], '\n') + 1
		text = text[:start] + text[end:]
	}
	return text
}

func TestUnknownNamesWhatIsMissing(t *testing.T) {
	cases := []struct {
		name    string
		remove  []string
		id      string
		missing []string
	}{
		{"coefficient", []string{`temp_voc           = "-0.26 %/K"`}, "array.south.voc_cold", []string{"panel.slate-410.temp_voc"}},
		{"two things", []string{`temp_voc           = "-0.26 %/K"`, `coldest   = "-27 degC"`}, "pv_input.main.1.voc_cold", []string{"panel.slate-410.temp_voc", "site.coldest"}},
		{"far away", []string{`coldest   = "-27 degC"`}, "system.dc_voltage_max", []string{"site.coldest"}},
		{"a group", []string{`charge_cutoff    = "90 A"`}, "bank.house.charge_current_accepted", []string{"battery.fell-200.bms.charge_cutoff"}},
		{"a length", []string{`length = "14 m"`}, "cable_run.array.south.path_drop", []string{"cable_run.array.south.length"}},
		{"a length, from the string's run", []string{`length = "14 m"`}, "cable_run.string.south.b.path_drop", []string{"cable_run.array.south.length"}},
		{"a size whose strand hangs on it", []string{`size   = "16 mm2"`}, "cable_run.array.south.resistance", []string{"cable_run.array.south.size", "cable_run.array.south.strand"}},
		{"backfeed", []string{`pv_backfeed_max      = "0 A"`}, "string.south.a.fault_current", []string{"controller.ridge-70.pv_backfeed_max"}},
		{"a setting", []string{`charge_current           = "60 A"`}, "charger.main.charge_current_limit", []string{"charger.main.settings.charge_current"}},
		{"a surge", []string{`surge = "1.9 kW"`}, "bank.house.discharge_current_peak", []string{"load.pump.surge"}},
		{"lowest voltage, nowhere", []string{`voltage_min = "21 V"`, `low_voltage_disconnect = "22 V"`}, "load.lights.current", []string{"bank.house.low_voltage_disconnect"}},
		{"chemistry", []string{`chemistry             = "lifepo4"`}, "bank.house.charge_current_accepted", []string{"battery.fell-200.chemistry"}},
		{"a list", []string{`bank_voltages        = ["12 V", "24 V", "48 V"]`}, "charger.main.bank_voltage_supported", []string{"controller.ridge-70.bank_voltages"}},
		{"a word", []string{`mounting = "open_rack"`}, "charger.main.run_headroom", []string{"array.south.mounting"}},
		{"neither noct nor nmot", []string{`noct               = "44 degC"`}, "string.south.a.cell_hot", []string{"panel.slate-410.noct"}},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			s := load(t, without(t, hut, c.remove...))
			f := get(t, s, c.id)
			if f.Known || f.Value() != nil {
				t.Errorf("%s is %v, want unknown", c.id, f.Value())
			}
			if diff := cmp.Diff(c.missing, f.Missing); diff != "" {
				t.Errorf("missing (-want +got):\n%s", diff)
			}
			if f.Says != "" {
				t.Errorf("an unknown fact has workings: %q", f.Says)
			}
		})
	}
}

// What does not matter for a result is not asked for.
func TestWhatDoesNotMatterIsNotMissed(t *testing.T) {
	cases := []struct {
		name   string
		remove []string
		id     string
		want   float64
	}{
		{"derating, below full_power_to", []string{`derate               = "2 %/K"`}, "charger.main.charge_current_limit", 60},
		{"bank's coldest, without compensation", []string{`coldest                = "5 degC"`}, "bank.house.voltage_max", 28.6},
		{"bank's disconnect, where the load says its lowest voltage", []string{`low_voltage_disconnect = "22 V"`}, "load.lights.current", 60.0 / 21},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			s := load(t, without(t, hut, c.remove...))
			if got := number(t, s, c.id); !near(got, c.want, 1e-8) {
				t.Errorf("%s is %v, want %v", c.id, got, c.want)
			}
		})
	}
}

func TestAtLeast(t *testing.T) {
	cases := []struct {
		name   string
		remove []string
		id     string
		want   float64 // in the document's unit; 0 for none
	}{
		{"a charge source", []string{`charge_current = "40 A"`}, "bank.house.charge_current_total", 60},
		{"a charge source, as a share", []string{`charge_current = "40 A"`}, "bank.house.charge_rate", 15},
		{"the setting", []string{`charge_current           = "60 A"`}, "bank.house.charge_current_total", 40},
		{"whether it runs beside the sun", []string{`together       = true`}, "bank.house.charge_current_total", 60},
		{"one of two panels in series", []string{`voc                = "41.0 V"`}, "string.south.b.voc_cold", 42.45648},
		{"one of two panels, the other string decides", []string{`voc                = "41.0 V"`}, "pv_input.main.1.voc_cold", 84.91296},
		{"its copy", []string{`voc                = "41.0 V"`}, "array.south.voc_cold", 84.91296},
		{"and the system's", []string{`voc                = "41.0 V"`}, "system.dc_voltage_max", 84.91296},
		{"what a device meets", []string{`voc                = "41.0 V"`}, "protection.string.south.b.bus_voltage", 84.91296},
		{"the coldest morning, everywhere", []string{`coldest   = "-27 degC"`}, "pv_input.main.1.voc_cold", 0},
		{"backfeed", []string{`pv_backfeed_max      = "0 A"`}, "string.south.a.fault_current", 27.8},
		{"a difference keeps none", []string{`voc                = "41.0 V"`}, "pv_input.main.1.voc_headroom", 0},
		{"capacity below a rate", []string{`capacity              = "200 Ah"`}, "bank.house.charge_rate", 0},
		{"one surge of several", []string{`surge = "24 W"`, `surge       = "60 W"`}, "bank.house.discharge_current_peak", 172.939268},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			f := get(t, load(t, without(t, hut, c.remove...)), c.id)
			switch {
			case f.Known:
				t.Errorf("%s is known: %v", c.id, f.Value())
			case f.AtLeast == nil && c.want != 0:
				t.Errorf("%s has no bound, want %v", c.id, c.want)
			case f.AtLeast != nil && !near(facts.InUnit(*f.AtLeast, f.Unit), c.want, 1e-8):
				t.Errorf("%s is at least %v, want %v", c.id, facts.InUnit(*f.AtLeast, f.Unit), c.want)
			}
		})
	}
}

func TestAssumed(t *testing.T) {
	cases := []struct {
		name    string
		remove  []string
		id      string
		assumed []string
	}{
		{"nothing", nil, "pv_input.main.1.voc_cold", nil},
		{"a default, by itself", nil, "cable_run.charger.main.material", []string{"cable_run.charger.main.material"}},
		{"defaults, below", nil, "cable_run.charger.main.resistance", []string{"cable_run.charger.main.material", "cable_run.charger.main.strand",
			"cable_run.charger.main.tinned", "cable_run.charger.main.per_pole"}},
		{"constants of a formula", nil, "string.south.a.isc_max", []string{"string.south.a.cloud_edge", "panel.slate-410.short_circuit", "array.south.mounting_rise"}},
		{"bulk voltage", nil, "bank.house.bulk_voltage", []string{"bank.house.bulk_voltage_per_cell"}},
		{"the data sheet's lowest voltage for the programmed one", []string{`low_cutoff = "23 V"`}, "ac_output.cabin.current", []string{"ac_output.cabin.voltage_lowest"}},
		{"parallel", nil, "string.south.b.parallel", []string{"string.south.b.parallel"}},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			f := get(t, load(t, without(t, hut, c.remove...)), c.id)
			if !f.Known {
				t.Fatalf("%s is unknown: %v", c.id, f.Missing)
			}
			if diff := cmp.Diff(c.assumed, f.Assumed); diff != "" {
				t.Errorf("assumed (-want +got):\n%s", diff)
			}
		})
	}
}

// A bad value is unknown; a default must not take its place.
func TestBadValueIsUnknown(t *testing.T) {
	s, problems := loose(strings.Replace(hut, `size   = "25 mm2"`, "size   = \"25 mm2\"\n    material = \"Fe\"", 1))
	if len(problems) == 0 {
		t.Fatal("iron is taken for a conductor")
	}
	f := get(t, s, "cable_run.charger.main.resistance")
	if f.Known || !slices.Contains(f.Missing, "cable_run.charger.main.material") {
		t.Errorf("resistance of a bad material: %+v", f)
	}
}

// What cannot be placed makes nobody look better.
func TestLostSubjects(t *testing.T) {
	replaced := func(old, with string) string {
		if !strings.Contains(hut, old) {
			t.Fatalf("no %q in the design", old)
		}
		return strings.Replace(hut, old, with, 1)
	}
	cases := []struct {
		name, design, id, missing string
		atLeast                   float64
	}{
		{"a string of unknown panels", replaced(`{ "slate-410" = 1, "dusk-380" = 1 }`, `{ "slate-410" = 1, "dawn" = 1 }`), "pv_input.main.1.isc_stc", "string.south.b.panels", 27.8},
		{"and its array", replaced(`{ "slate-410" = 1, "dusk-380" = 1 }`, `{ "slate-410" = 1, "dawn" = 1 }`), "cable_run.array.south.current", "string.south.b.panels", 27.8},
		{"and the other string", replaced(`{ "slate-410" = 1, "dusk-380" = 1 }`, `{ "slate-410" = 1, "dawn" = 1 }`), "string.south.a.fault_current", "string.south.b.panels", 13.9},
		{"an array of an unknown charger", hut + "\narray \"west\" {\n  charger = \"mian\"\n  string \"a\" {\n    panels = { \"slate-410\" = 3 }\n  }\n}\n", "pv_input.main.1.voc_cold", "array.west.charger", 89.42608},
		{"and the charger", hut + "\narray \"west\" {\n  charger = \"mian\"\n  string \"a\" {\n    panels = { \"slate-410\" = 3 }\n  }\n}\n", "charger.main.pv_power", "array.west.charger", 2430},
		{"a charger of an unknown controller", hut + "\ncharger \"second\" {\n  controller = \"rigde\"\n  bank = \"house\"\n}\n", "bank.house.charge_current_total", "charger.second.controller", 100},
		{"a charger of an unknown bank", hut + "\ncharger \"second\" {\n  controller = \"ridge-70\"\n  bank = \"hose\"\n}\n", "bank.house.voltage_max", "charger.second.bank", 28.6},
		{"a charge source of an unknown bank", hut + "\ncharge_source \"shore\" {\n  bank = \"hose\"\n}\n", "bank.house.charge_current_rated", "charge_source.shore.bank", 110},
		{"an unknown inverter", hut + "\nac_output \"shed\" {\n  inverter = \"moor\"\n  bank = \"house\"\n}\n", "bank.house.discharge_current_continuous", "ac_output.shed.inverter", 114.968254},
		{"an unknown converter", hut + "\nsupply \"five\" {\n  converter = \"brook\"\n  from = \"bank.house\"\n}\n", "bank.house.discharge_current_continuous", "supply.five.converter", 114.968254},
		{"a load from nowhere", hut + "\nload \"fridge\" {\n  from = \"bank.hose\"\n  power = \"60 W\"\n}\n", "bank.house.discharge_current_continuous", "load.fridge.from", 114.968254},
		{"a bank of an unknown battery", hut + "\nbank \"start\" {\n  battery = \"fel\"\n  series = 1\n  parallel = 1\n}\n", "system.dc_voltage_max", "bank.start.battery", 89.42608},
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			s, problems := loose(c.design)
			if len(problems) == 0 {
				t.Fatal("the design has no problem")
			}
			f := get(t, s, c.id)
			if f.Known || !slices.Contains(f.Missing, c.missing) {
				t.Errorf("%s: known %v, missing %v, want unknown for want of %s", c.id, f.Known, f.Missing, c.missing)
			}
			if f.AtLeast == nil || !near(facts.InUnit(*f.AtLeast, f.Unit), c.atLeast, 1e-8) {
				t.Errorf("%s: bound %v, want %v", c.id, f.AtLeast, c.atLeast)
			}
		})
	}
}

// removable are the lines of the design that hold one attribute each, with the
// attribute's value removed in turn.
func removable(text string) []string {
	var lines []string
	for line := range strings.Lines(text) {
		trimmed := strings.TrimSpace(line)
		if strings.Contains(trimmed, " = ") {
			lines = append(lines, line)
		}
	}
	return lines
}

// Deleting any one attribute from a design: the design has a problem, or every
// fact that changes turns unknown, or says that it assumes something new.
func TestDeletingAnyAttribute(t *testing.T) {
	whole := load(t, hut)
	before := known(whole)
	at := 0
	deleted := 0
	for _, line := range removable(hut) {
		at += strings.Index(hut[at:], line)
		s, problems := loose(hut[:at] + hut[at+len(line):])
		at += len(line)
		if len(problems) > 0 {
			continue
		}
		deleted++
		for id, f := range known(s) {
			was, there := before[id]
			if !there {
				t.Errorf("without %q %s is there, and was not", strings.TrimSpace(line), id)
				continue
			}
			if !was.Known || cmp.Equal(was.Value(), f.Value()) {
				continue
			}
			if f.Known && len(f.Assumed) <= len(was.Assumed) {
				t.Errorf("without %q %s turns from %v to %v and says nothing", strings.TrimSpace(line), id, was.Value(), f.Value())
			}
		}
	}
	if deleted < 80 {
		t.Errorf("only %d attributes were deleted", deleted)
	}
}

// known derives every fact of a system.
func known(s *facts.System) map[string]facts.Fact {
	all := map[string]facts.Fact{}
	for _, c := range facts.Collections() {
		for _, about := range s.Subjects(c.Name) {
			for _, e := range c.Entries {
				id := about.ID() + "." + e.Name
				f, ok := s.Fact(id)
				if ok {
					all[id] = f
				}
			}
		}
	}
	return all
}

// noteOf is why a fact is unknown although what it reads is known; else "".
func noteOf(s *facts.System, id string) string {
	w, _ := s.Work(id)
	return w.Note
}

// sound checks what holds for every fact of any design.
func sound(t interface{ Errorf(string, ...any) }, s *facts.System) {
	for id, f := range known(s) {
		switch {
		case f.ID != id:
			t.Errorf("%s calls itself %s", id, f.ID)
		case f.Known && len(f.Missing) > 0, f.Known && f.AtLeast != nil:
			t.Errorf("%s is known and misses %v, at least %v", id, f.Missing, f.AtLeast)
		case !f.Known && len(f.Missing) == 0 && f.Because == "", f.Known && f.Because != "":
			t.Errorf("%s: known %v, misses nothing, because %q", id, f.Known, f.Because)
		case slices.ContainsFunc(f.Missing, func(id string) bool {
			given, ok := s.Fact(id)
			return ok && given.Known && id != "site.weather" // which names a file that may be unreadable
		}):
			t.Errorf("%s is told to miss what is given: %v", id, f.Missing)
		case !f.Known && (f.SI != 0 || f.Word != "" || f.Yes || f.List != nil || f.Says != noteOf(s, id)):
			t.Errorf("%s is unknown and has a value: %+v", id, f)
		case math.IsNaN(f.SI) || math.IsInf(f.SI, 0):
			t.Errorf("%s is not finite", id)
		case f.AtLeast != nil && !(*f.AtLeast > 0 && !math.IsInf(*f.AtLeast, 0)):
			t.Errorf("%s has the bound %v", id, *f.AtLeast)
		}
	}
}
