package commission_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint"
	"stringline/lint/commission"
	"stringline/lint/facts"
	"stringline/lint/verdict"
	"stringline/schema/design"
)

// connected are the kinds of block that are connected, looked at or programmed on
// site; each must turn up in the plan.
var connected = []string{"bank", "charger", "array", "string", "ac_output", "load", "supply", "charge_source", "cable_run", "fuse", "breaker", "disconnect", "settings", "grounding"}

// TestExamples judges every example once, then holds their plans.
func TestExamples(t *testing.T) {
	r := judged(t, examples(t), "examples")
	t.Run("every block", func(t *testing.T) { everyBlock(t, r) })
	t.Run("order", func(t *testing.T) { orderOfConnection(t, r) })
}

// everyBlock counts the blocks of every example, as the design has them, and
// looks for each in the lines of the plan.
func everyBlock(t *testing.T, r *lint.Result) {
	if len(r.Designs) < 10 {
		t.Fatalf("only %d designs", len(r.Designs))
	}
	seen := 0
	for i := range r.Designs {
		d := &r.Designs[i]
		p := commission.Of(d, at(r, 41, 820))
		named := map[string]bool{}
		for s := range p.Sections {
			for _, l := range p.Sections[s].Lines {
				named[l.About] = true
				for _, id := range l.With {
					named[id] = true
				}
				if l.Kind == commission.Set {
					named[l.About+".settings"] = true
				}
			}
		}
		var walk func(b *design.Block)
		walk = func(b *design.Block) {
			if slices.Contains(connected, b.Kind.Name) && !(b.Parent == nil && b.Kind.Part) {
				seen++
				if !named[b.ID()] {
					t.Errorf("%s: %s is not in the plan", d.File, b.ID())
				}
			}
			for _, inner := range b.Blocks {
				walk(inner)
			}
		}
		for _, b := range d.System.Design().Blocks {
			walk(b)
		}
	}
	if seen < 200 {
		t.Errorf("only %d blocks: this test would prove little", seen)
	}
}

// orderOfConnection holds the order of connection on every example: a bank before its
// chargers, a charger with its settings before its arrays, arrays before other
// sources, those before inverters and converters, and those before loads.
func orderOfConnection(t *testing.T, r *lint.Result) {
	for i := range r.Designs {
		d := &r.Designs[i]
		p := commission.Of(d, unmeasured(r))
		place := map[string]int{}
		n := 0
		for s := range p.Sections {
			for _, l := range p.Sections[s].Lines {
				if n++; l.Number != n {
					t.Errorf("%s: line %d is numbered %d", d.File, n, l.Number)
				}
				place[l.Key] = n
			}
		}
		if len(place) != n {
			t.Errorf("%s: %d lines have %d keys", d.File, n, len(place))
		}
		before := func(first, then string) {
			t.Helper()
			a, b := place[first], place[then]
			if a == 0 || b == 0 || a >= b {
				t.Errorf("%s: %s (line %d) before %s (line %d)", d.File, first, a, then, b)
			}
		}
		s := d.System
		for _, c := range s.Subjects("chargers") {
			id := c.ID()
			before("order|system|isolate", "order|"+id+"|connect")
			before("order|"+c.Linked("bank")[0].ID()+"|connect", "order|"+id+"|connect")
			before("order|"+id+"|connect", "order|"+id+"|voltage")
			before("order|"+id+"|voltage", "order|"+id+"|program")
		}
		for _, a := range s.Subjects("arrays") {
			before("order|"+a.Linked("charger")[0].ID()+"|program", "order|"+a.ID()+"|strings")
			before("order|"+a.ID()+"|strings", "order|"+a.Linked("pv_input")[0].ID()+"|voc")
			before("order|"+a.Linked("pv_input")[0].ID()+"|voc", "order|"+a.ID()+"|connect")
			for _, kind := range []string{"charge_sources", "ac_outputs", "supplies", "loads"} {
				for _, one := range s.Subjects(kind) {
					before("order|"+a.ID()+"|connect", "order|"+one.ID()+"|connect")
				}
			}
		}
		for _, l := range s.Subjects("loads") {
			for _, kind := range []string{"charge_sources", "ac_outputs", "supplies"} {
				for _, one := range s.Subjects(kind) {
					before("order|"+one.ID()+"|connect", "order|"+l.ID()+"|connect")
				}
			}
			before("order|"+l.ID()+"|connect", "order|system|back_out")
		}
		for _, str := range s.Subjects("strings") {
			before("strings|"+str.ID()+"|voc", "order|"+str.Linked("array")[0].ID()+"|strings")
		}
		for _, b := range s.Subjects("banks") {
			if parallel, _ := s.Fact(b.ID() + ".parallel"); parallel.SI > 1 {
				before("battery|"+b.ID()+"|apart", "order|"+b.ID()+"|join")
				before("order|"+b.ID()+"|join", "order|"+b.ID()+"|connect")
			}
		}
		back := lineOf(t, p, "order|system|back_out").With
		if len(back) > 0 && !strings.HasPrefix(back[len(back)-1], "bank.") {
			t.Errorf("%s: the way back ends with %s, not with a bank", d.File, back[len(back)-1])
		}
	}
}

// TestExpectedReadings holds what a plan expects against the data sheet of the
// module of check value D2, which states 29.9 V and 6.62 A at 800 W/m2 and cells
// of 47 degC (from memory): two in series, each string by itself, 5 % either way
// with the light measured (IEC 62446-1, from memory).
func TestExpectedReadings(t *testing.T) {
	r := built(t, shed)
	p := commission.Of(&r.Designs[0], at(r, 47, 800))
	for _, c := range []struct {
		key  string
		want float64
		unit string
		due  int
	}{
		{"strings|string.roof.a|voc", 2 * 29.9, "V", 2},
		{"strings|string.roof.a|isc", 6.62, "A", 2},
		{"order|pv_input.main.1|voc", 2 * 29.9, "V", 1},
	} {
		l := lineOf(t, p, c.key)
		e := l.Expect[0]
		if e.Value == nil || !near(*e.Value, c.want, 0.006) || e.Unit != c.unit || l.Due != c.due || l.State != commission.NotMeasured || l.Remains != c.due {
			t.Errorf("%s: %+v, %d due, %s", c.key, e, l.Due, l.State)
			continue
		}
		if !near(*e.Low, 0.95**e.Value, 1e-12) || !near(*e.High, 1.05**e.Value, 1e-12) || *e.Tolerance != 0.05 {
			t.Errorf("%s: band %v to %v about %v", c.key, *e.Low, *e.High, *e.Value)
		}
	}
	// 100 V on the coldest morning: 2 x 32.9 V x (1 + 0.123/32.9 x 45) = 76.87 V there.
	limit := lineOf(t, p, "order|pv_input.main.1|voc").Expect[1]
	cold := 2 * 32.9 * (1 + 0.123/32.9*45)
	if limit.Relation != commission.AtMost || limit.Value == nil || !near(*limit.Value, 100*2*29.9/cold, 0.006) {
		t.Errorf("limit of the moment: %+v", limit)
	}
	// Conservation of energy: 4 x 142 W (data sheet at 800 W/m2, from memory) x 96 %
	// / 13.4 V is more than the 30 A that are set.
	current := lineOf(t, p, "live|charger.main|current")
	if e := current.Expect[0]; e.Value == nil || *e.Value != 30 {
		t.Errorf("charge current: %+v", e)
	}
	faint := commission.Of(&r.Designs[0], at(r, 47, 400))
	if e := lineOf(t, faint, "live|charger.main|current").Expect[0]; e.Value == nil || !near(*e.Value, 0.96*4*142/2/13.4, 0.04) ||
		!near(*e.Low, 0.95*0.9**e.Value, 1e-9) || !near(*e.High, 1.05**e.Value, 1e-9) {
		t.Errorf("charge current in half the light: %+v", e)
	}
}

// TestWithoutConditions: nothing is taken for measured. What is due in light is
// unknown and says what is missing; tables say what to expect.
func TestWithoutConditions(t *testing.T) {
	r := built(t, shed)
	p := commission.Of(&r.Designs[0], unmeasured(r))
	if diff := cmp.Diff([]string{facts.NowCell, facts.NowIrradiance}, p.Now.Missing); diff != "" || p.Now.CellTemperature != nil || p.Now.Irradiance != nil {
		t.Errorf("conditions (-want +got):\n%s", diff)
	}
	for key, missing := range map[string][]string{
		"strings|string.roof.a|voc": {facts.NowCell}, "strings|string.roof.a|isc": {facts.NowIrradiance, facts.NowCell},
		"order|pv_input.main.1|voc": {facts.NowCell}, "live|charger.main|current": {facts.NowIrradiance, facts.NowCell},
	} {
		e := lineOf(t, p, key).Expect[0]
		if e.Known() || e.Low != nil || !cmp.Equal(e.Missing, missing) {
			t.Errorf("%s: %+v", key, e)
		}
	}
	// A table per string and quantity. At 25 degC and 1000 W/m2 a meter shows the
	// data sheet's own figures.
	if len(p.Tables) != 4 {
		t.Fatalf("%d tables", len(p.Tables))
	}
	for _, table := range p.Tables {
		if len(table.At) < 10 || len(table.At) != len(table.Values) {
			t.Errorf("%s: %d values at %d places", table.ID, len(table.Values), len(table.At))
		}
		last := table.Values[len(table.Values)-1]
		if table.ID == "string.roof.a.isc_by_irradiance" && !near(last, 8.21, 0.001) || table.ID == "string.roof.a.voc_by_irradiance" && !near(last, 65.8, 0.001) {
			t.Errorf("%s ends with %v", table.ID, last)
		}
	}
	// With the warmth alone a voltage is due, within 10 % (IEC 62446-1, from
	// memory); a current is not.
	kelvin := 320.15
	p = commission.Of(&r.Designs[0], commission.Conditions{CellTemperature: &kelvin})
	if e := lineOf(t, p, "strings|string.roof.a|voc").Expect[0]; e.Value == nil || *e.Tolerance != 0.10 || !near(*e.High, 1.1**e.Value, 1e-12) {
		t.Errorf("voltage by warmth alone: %+v", e)
	}
	if e := lineOf(t, p, "strings|string.roof.a|isc").Expect[0]; e.Known() {
		t.Errorf("a current without light: %+v", e)
	}
	if p.Now.Note != "" || commission.Of(&r.Designs[0], at(r, 20, 399)).Now.Note == "" || commission.Of(&r.Designs[0], at(r, 20, 400)).Now.Note != "" {
		t.Error("the warning about faint light")
	}
	// At dusk nothing may look as if no voltage were due.
	for light, measured := range map[float64]bool{0: false, 49.9: false, 50: true} {
		p := commission.Of(&r.Designs[0], at(r, 20, light))
		isc, voc := lineOf(t, p, "strings|string.roof.a|isc").Expect[0], lineOf(t, p, "strings|string.roof.a|voc").Expect[0]
		if (p.Now.Irradiance != nil) != measured || isc.Known() != measured || p.Now.Note == "" || voc.Value == nil || *voc.Value < 40 {
			t.Errorf("at %v W/m2: %+v, %v, %v", light, p.Now, isc, voc)
		}
	}
}

// TestMissingData: an unknown fact is an empty entry that says what to supply,
// wherever it is looked at, and never a default.
func TestMissingData(t *testing.T) {
	for _, c := range []struct {
		cut, key, missing string
		expect            int
	}{
		{`  voc             = "32.9 V"`, "strings|string.roof.a|voc", "panel.multi-200.voc", 0},
		{`  pv_voltage_max     = "100 V"`, "order|pv_input.main.1|voc", "controller.tracker.pv_voltage_max", 1},
		{`    absorption     = "14.2 V"`, "settings|charger.main|absorption", "charger.main.settings.absorption", 0},
		{`  discharge_voltage_min = "10.8 V"`, "order|bank.house|voltage", "battery.block.discharge_voltage_min", 0},
		{`  nominal               = "12.8 V"`, "battery|bank.house|apart", "battery.block.nominal", 0},
		{`  short_circuit_current = "2.4 kA"`, "labels|bank.house|label", "battery.block.short_circuit_current", 2},
		{`  low_voltage_disconnect = "11.5 V"`, "functional|bank.house|low_voltage", "bank.house.low_voltage_disconnect", 0},
		{`    rating     = "32 A"`, "dead|disconnect.array.roof|device", "disconnect.array.roof.rating", 0},
		{`  coldest = "-20 degC"`, "labels|pv_input.main.1|label", "site.coldest", 0},
	} {
		if !strings.Contains(shed, c.cut) {
			t.Fatalf("the shed has no %q", c.cut)
		}
		r := built(t, strings.Replace(shed, c.cut, "", 1))
		e := lineOf(t, commission.Of(&r.Designs[0], at(r, 47, 800)), c.key).Expect[c.expect]
		if e.Known() || !slices.Contains(e.Missing, c.missing) || e.ID == "" {
			t.Errorf("without %s: %+v", strings.TrimSpace(c.cut), e)
		}
	}
	r := built(t, shed) // no grounding block, no settings for the cold
	p := commission.Of(&r.Designs[0], at(r, 47, 800))
	if e := lineOf(t, p, "dead|grounding|bonds").Expect[0]; e.Known() || !slices.Contains(e.Missing, "grounding.dc") {
		t.Errorf("without grounding: %+v", e)
	}
}

// TestStanding: a stop, found or unproven, keeps the system from being
// energized; so does what could not be read. A fix does not.
func TestStanding(t *testing.T) {
	// A design with one verdict that meets, and one more.
	verdicts := func(outcome verdict.Outcome, grade verdict.Grade) *lint.DesignResult {
		d := &built(t, shed).Designs[0]
		d.Verdicts = []verdict.Verdict{{Rule: "limits.first", About: "bank.house", Outcome: verdict.Meets, Grade: verdict.Stop}}
		if outcome != "" {
			d.Verdicts = append(d.Verdicts, verdict.Verdict{Rule: "limits.second", About: "bank.house", Outcome: outcome, Grade: grade, Title: "Second"})
		}
		return d
	}
	for _, c := range []struct {
		outcome  verdict.Outcome
		grade    verdict.Grade
		energize bool
	}{
		{"", "", true}, {verdict.Breaks, verdict.Fix, true}, {verdict.Unproven, verdict.Fix, true}, {verdict.Breaks, verdict.Stop, false},
		{verdict.Unproven, verdict.Stop, false}, {verdict.Void, verdict.Fix, false}, {verdict.Waived, verdict.Stop, true}, {verdict.DoesNotApply, verdict.Stop, true},
	} {
		p := commission.Of(verdicts(c.outcome, c.grade), commission.Conditions{})
		order := p.Sections[3]
		warned := len(order.Cautions) > 0 && strings.HasPrefix(order.Cautions[0], "Not to be energized")
		if p.Standing.Energize != c.energize || warned == c.energize || strings.HasPrefix(p.Standing.Says, "Not to be energized") == c.energize {
			t.Errorf("%s %s: %+v, warned %v", c.outcome, c.grade, p.Standing, warned)
		}
	}
	none := verdicts("", "")
	none.Verdicts = nil
	if commission.Of(none, commission.Conditions{}).Standing.Energize {
		t.Error("a design that nothing judged may be energized")
	}
	r := judged(t, map[string]string{"shed/shed.design.hcl": strings.Replace(shed, `"2.4 kA"`, `"2.4 kV"`, 1)}, "shed")
	if p := commission.Of(&r.Designs[0], commission.Conditions{}); p.Standing.Energize || len(p.Standing.Problems) != 1 {
		t.Errorf("with an error in it: %+v", p.Standing)
	}
	empty := commission.Of(&lint.DesignResult{File: "x.design.hcl"}, commission.Conditions{})
	if empty.Standing.Energize || len(empty.Sections) != 8 || empty.Summary.Lines != 0 {
		t.Errorf("a design that could not be read: %+v", empty)
	}
}

// TestNoArray: a system without panels has none of theirs in its plan.
func TestNoArray(t *testing.T) {
	text := shed[:strings.Index(shed, "controller \"tracker\"")] + shed[strings.Index(shed, "battery \"block\""):strings.Index(shed, "charger \"main\"")] +
		"charge_source \"engine\" {\n  bank = \"house\"\n  charge_current = \"40 A\"\n  charge_voltage = \"14.4 V\"\n}\n"
	r := built(t, text)
	p := commission.Of(&r.Designs[0], at(r, 47, 800))
	for _, key := range keys(p) {
		if strings.Contains(key, "pv_") || strings.Contains(key, "array") || strings.Contains(key, "string.") {
			t.Errorf("%s in a system without panels", key)
		}
	}
	for _, text := range slices.Concat(p.Hazards, p.Sections[2].Cautions, p.Sections[3].Cautions) {
		if strings.Contains(text, "PV") || strings.Contains(text, "array") {
			t.Errorf("a caution about panels: %s", text)
		}
	}
	if l := lineOf(t, p, "settings|charge_source.engine|charge_current"); l.Expect[0].Value == nil || *l.Expect[0].Value != 40 {
		t.Errorf("the engine's current: %+v", l.Expect)
	}
	lineOf(t, p, "order|charge_source.engine|connect")
	if len(p.Tables) != 0 {
		t.Errorf("%d tables", len(p.Tables))
	}
}

// TestSeveralInputs: every input of every charger has lines of its own, and like
// strings are compared within an input alone.
func TestSeveralInputs(t *testing.T) {
	text := strings.Replace(shed, `  full_power_to      = "45 degC"`, "  full_power_to      = \"45 degC\"\n  pv_inputs = 2", 1) + `
array "wall" {
  charger  = "main"
  pv_input = 2
  string "a" {
    panels = { "multi-200" = 2 }
  }
  string "b" {
    panels = { "multi-200" = 2 }
  }
  string "c" {
    panels = { "multi-200" = 1 }
  }
}
array "shed" {
  charger  = "main"
  pv_input = 2
  string "a" {
    panels = { "multi-200" = 2 }
  }
}
`
	r := built(t, text)
	p := commission.Of(&r.Designs[0], at(r, 47, 800))
	lineOf(t, p, "order|pv_input.main.1|voc")
	if l := lineOf(t, p, "order|pv_input.main.2|voc"); !cmp.Equal(l.With, []string{"array.wall", "array.shed"}) || !strings.Contains(l.Says, "of each of its arrays by itself, alike, before any two are joined") {
		t.Errorf("second input: %v, %q", l.With, l.Says)
	}
	if l := lineOf(t, p, "strings|string.wall.a|like_voc"); !cmp.Equal(l.With, []string{"string.wall.b", "string.shed.a"}) {
		t.Errorf("like strings: %v", l.With)
	}
	if slices.Contains(keys(p), "strings|string.wall.c|like_voc") {
		t.Error("a string that is like no other is compared")
	}
	if l := lineOf(t, p, "order|array.wall|connect"); !strings.Contains(l.Caution, "Nothing in the design parts this array") {
		t.Errorf("an array without a switch: %q", l.Caution)
	}
}

// TestTwice: the same input gives the same plan.
func TestTwice(t *testing.T) {
	r := built(t, with("string.roof.a.voc 60 V 47 800", "bank.house.each.voltage 13.2 V"))
	first, second := commission.Of(&r.Designs[0], at(r, 47, 800)), commission.Of(&r.Designs[0], at(r, 47, 800))
	if diff := cmp.Diff(first, second); diff != "" {
		t.Error(diff)
	}
	if fmt.Sprint(keys(first)) == "" || first.Summary.Recorded != 2 {
		t.Errorf("%+v", first.Summary)
	}
}

func BenchmarkOf(b *testing.B) {
	r := judged(b, examples(b), "examples/clinic/clinic.design.hcl")
	b.ReportAllocs()
	for b.Loop() {
		commission.Of(&r.Designs[0], at(r, 47, 800))
	}
}
