package report

import (
	"bytes"
	"strings"
	"testing"

	"stringline/lint"
	"stringline/lint/facts"
	"stringline/lint/verdict"
)

// A gauge is shown by its name, and an area that is none in mm2. Gauge n has a
// diameter of 0.127 mm x 92^((36-n)/39) (ASTM B258, from memory): 5.978 gives
// 4.125 mm, 13.4 mm2.
func TestGaugesAreNames(t *testing.T) {
	for value, want := range map[float64]string{2: "2 AWG", 0: "1/0 AWG", -2: "3/0 AWG", 5.978: "13.4 mm2"} {
		if got := show(value, "AWG"); got != want {
			t.Errorf("%g: %s, want %s", value, got, want)
		}
	}
}

// Compensation is read in mV/K per cell, as data sheets and menus have it: in what
// is found, allowed and left, in an empty entry, in a table of facts. 24 cells at
// -0.004 V/K a cell are -96 mV/K for the bank, which nobody is shown.
func TestCompensationIsPerCell(t *testing.T) {
	value, low, high := -0.004, -0.008, 0.0
	headroom := 0.5
	v := &verdict.Verdict{Rule: "limits.compensation_supported", About: "charger.east", Outcome: verdict.Meets, Relation: "between", Grade: verdict.Advise,
		Is:     &verdict.Measured{ID: "charger.east.settings.temperature_compensation", Value: &value, Unit: "V/K"},
		Limits: []verdict.Measured{{ID: "controller.c.compensation_min", Value: &low, Unit: "V/K"}, {ID: "controller.c.compensation_max", Value: &high, Unit: "V/K"}}, Headroom: &headroom}
	row, ok := limitRowOf(v)
	if !ok || row.found != "-4.00 mV/K" || row.allowed != "-8.00 mV/K" || row.what != "compensation supported per cell" {
		t.Errorf("%+v", row)
	}
	if got := note(v.Is); got != "charger.east.settings.temperature_compensation, per cell" {
		t.Errorf("note %q", got)
	}
	if got := difference(0.004, "V/K", "-4.00 mV/K", "-8 mV/K"); got != "4 mV/K" {
		t.Errorf("difference %q", got)
	}
	if a, b := apart(-0.004, -0.0040000001, "V/K"); a == b || !strings.HasSuffix(a, " mV/K") || !strings.HasPrefix(b, "-4.0000001") {
		t.Errorf("apart %q %q", a, b)
	}
	if got := empty("V/K"); got != "_____ mV/K" {
		t.Errorf("empty %q", got)
	}
	if got := factEntry(&facts.Fact{Known: true, SI: -0.0055, Unit: "V/K"}, true); got != "-5.5 mV/K" {
		t.Errorf("fact %q", got)
	}
	bench := exampleBench(t, "clinic", "clinic-broken.design.hcl")
	d, err := bench.Judge(t.Context(), lint.Trial{WithoutYear: true})
	if err != nil {
		t.Fatal(err)
	}
	var b bytes.Buffer
	if err := Facts(&b, d, Page{}); err != nil || strings.Contains(strings.ReplaceAll(b.String(), "mV/K", ""), "V/K") || !strings.Contains(b.String(), "-4 mV/K") {
		t.Errorf("the table of facts has V/K: %v", err)
	}
}
