package commission_test

import (
	"strings"
	"testing"

	"stringline/lint/commission"
)

// planOf is the plan of one of the examples.
func planOf(t *testing.T, name string, change func(string) string) *commission.Plan {
	t.Helper()
	texts := examples(t)
	file := "examples/" + name
	if change != nil {
		texts[file] = change(texts[file])
	}
	r := judged(t, texts, file)
	for i := range r.Designs {
		if r.Designs[i].File == file {
			return commission.Of(&r.Designs[i], unmeasured(r))
		}
	}
	t.Fatalf("%s is not among %d designs", file, len(r.Designs))
	return nil
}

// withoutBlock takes the first block out that begins with head, after a mark.
func withoutBlock(t *testing.T, text, mark, head string) string {
	t.Helper()
	from := strings.Index(text, mark)
	start := strings.Index(text[max(0, from):], head)
	if from < 0 || start < 0 {
		t.Fatalf("no %q after %q", head, mark)
	}
	start += from
	depth := 0
	for i := start; i < len(text); i++ {
		switch text[i] {
		case '{':
			depth++
		case '}':
			if depth--; depth == 0 {
				return text[:start] + text[i+1:]
			}
		}
	}
	t.Fatalf("%q does not end", head)
	return ""
}

// TestGroundedSideLast: while the pole that is not grounded is fastened, a tool
// that touches grounded metal must close no circuit (common practice at batteries
// of vehicles and buildings alike: the grounded terminal is the last on and the
// first off).
func TestGroundedSideLast(t *testing.T) {
	l := lineOf(t, planOf(t, "hut/hut.design.hcl", nil), "order|bank.house|connect")
	last, first := strings.Index(l.Says, "grounded side last"), strings.Index(l.Says, "first to be taken off")
	if last < 0 || first < last || !strings.Contains(l.Says, "main protection out") {
		t.Errorf("bank: %q", l.Says)
	}
}

// TestPrecharge: what is in the batteries' output fills capacitors as that switches
// on, and limits nothing where the bus is live already.
func TestPrecharge(t *testing.T) {
	own := lineOf(t, planOf(t, "hut/hut.design.hcl", nil), "order|ac_output.cabin|connect").Caution
	for _, want := range []string{"only while their output switches on", "PV switches open, switch it off, close this circuit, switch it on", "Onto a live bus fill the capacitors through a resistor"} {
		if !strings.Contains(own, want) {
			t.Errorf("batteries with a pre-charge: %q does not say %q", own, want)
		}
	}
	if none := lineOf(t, planOf(t, "boat/boat.design.hcl", nil), "order|ac_output.galley|connect").Caution; !strings.Contains(none, "through a resistor before its switch is closed") {
		t.Errorf("batteries without one: %q", none)
	}
}

// TestCompensation: the change for a cell in mV/K, and the cells that a bank's is
// times; 4 mV/K x 6 cells is the 24 mV/K of a 12 V lead battery (common practice:
// 18 to 30 mV/K). Where there is none no cells are asked for.
func TestCompensation(t *testing.T) {
	p := planOf(t, "boat/boat.design.hcl", nil)
	l := lineOf(t, p, "settings|charger.roof|temperature_compensation")
	if e := l.Expect[0]; l.Unit != "mV/K" || e.Unit != "mV/K" || e.Value == nil || !near(*e.Value, -4, 1e-9) {
		t.Errorf("compensation: %+v", l)
	}
	cells := lineOf(t, p, "settings|charger.roof|compensation_cells").Expect
	if len(cells) != 2 || *cells[0].Value != 6 || *cells[1].Value != 1 {
		t.Errorf("cells: %+v", cells)
	}
	p = planOf(t, "hut/hut.design.hcl", nil)
	if e := lineOf(t, p, "settings|charger.main|temperature_compensation").Expect[0]; e.Unit != "mV/K" || e.Value == nil || *e.Value != 0 {
		t.Errorf("none: %+v", e)
	}
	for _, key := range keys(p) {
		if strings.Contains(key, "compensation_cells") {
			t.Error("cells are asked for where nothing is compensated")
		}
	}
}

// TestNoSwitch: nobody is told to leave a switch open that is not there.
func TestNoSwitch(t *testing.T) {
	p := planOf(t, "hut/hut.design.hcl", func(text string) string {
		text = withoutBlock(t, text, "array \"south\"", "\n  disconnect {")
		return withoutBlock(t, text, "# Together 13.95", "\n  breaker {")
	})
	if l := lineOf(t, p, "order|array.south|strings"); strings.Contains(l.Says, "switch open") || !strings.Contains(l.Says, "its conductors off the controller") {
		t.Errorf("strings: %q", l.Says)
	}
	if l := lineOf(t, p, "order|pv_input.main.1|voc"); !strings.Contains(l.Says, "not connected to it") {
		t.Errorf("input: %q", l.Says)
	}
	for _, s := range p.Sections {
		if s.Key == commission.Strings && !strings.Contains(strings.Join(s.Cautions, " "), "the conductors of an array that has none stay off the controller") {
			t.Errorf("cautions: %q", s.Cautions)
		}
	}
}
