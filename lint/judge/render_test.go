package judge

import (
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"

	"stringline/lint/facts"
	"stringline/schema/quantity"
	"stringline/schema/source"
)

// With a design's values the branch that was taken stands alone; without them, or
// where the condition is unknown, both stand with it.
func TestChosenBranchInWords(t *testing.T) {
	f := mustCombine(t, "times",
		mustCombine(t, "either", leafOf("wet", "yes_no"), mustCombine(t, "plus", leafOf("low", "A"), leafOf("low", "A")), leafOf("high", "A")),
		leafOf("factor", ""))
	ampere := func(id string, v float64) facts.Fact {
		return facts.Fact{ID: id, Unit: "A", Known: true, SI: quantity.MustLookup("A").ToSI(v)}
	}
	values := func(wet facts.Fact) someValues {
		wet.ID, wet.Kind = "wet", facts.YesNo
		return someValues{"wet": wet, "low": ampere("low", 10), "high": ampere("high", 30), "factor": {ID: "factor", Known: true, SI: 2}}
	}
	for _, c := range []struct {
		name string
		vs   someValues
		want string
	}{
		{"yes", values(facts.Fact{Known: true, Yes: true}), "(10.0 A + 10.0 A) x 2"},
		{"no", values(facts.Fact{Known: true}), "30.0 A x 2"},
		{"unknown", values(facts.Fact{}), "(10.0 A + 10.0 A if _____, else 30.0 A) x 2"},
	} {
		if got := f.words(c.vs); got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
	if got, want := f.words(nil), "(low + low if wet, else high) x factor"; got != want {
		t.Errorf("without values: %q, want %q", got, want)
	}
}

// A gauge is a name: what stands as -2 in a rule is 3/0 in the trade.
func TestGaugesInFormulas(t *testing.T) {
	unit, ok := quantity.Lookup("AWG")
	if !ok {
		t.Fatal("there is no AWG")
	}
	for number, want := range map[ast.Number]string{"8": "8 AWG", "-2": "3/0 AWG"} {
		f, wrong := plainNumber(number, unit, source.Range{})
		if wrong != nil || f.words(nil) != want {
			t.Errorf("%s: %v, %v; want %s", number, f, wrong, want)
		}
	}
}
