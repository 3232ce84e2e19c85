package judge

import (
	"math"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"pgregory.net/rapid"

	"stringline/lint/facts"
	"stringline/schema/quantity"
	"stringline/schema/source"
)

// someValues are facts by id.
type someValues map[string]facts.Fact

func (v someValues) fact(id string) (facts.Fact, bool) {
	f, ok := v[id]
	return f, ok
}

func leafOf(id, unit string) *formula {
	f := &formula{op: "leaf", id: id}
	switch unit {
	case "word":
		f.kind = word
	case "yes_no":
		f.kind = yesNo
	default:
		f.unit = quantity.MustLookup(unit)
	}
	return f
}

func mustCombine(t interface{ Fatal(...any) }, op string, of ...*formula) *formula {
	f, wrong := combine(op, of, source.Range{})
	if wrong != nil {
		t.Fatal(wrong.message)
	}
	return f
}

// What is said of an unknown operand's size must hold for whatever it turns out
// to be: a formula over unknowns with bounds gives an interval, and the value
// with the unknowns filled in lies in it. Logic that decides without an unknown
// decides the same with it.
func TestBoundsHold(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		full, partial := someValues{}, someValues{}
		number := rapid.SampledFrom([]float64{-3, -1, 0, 0.5, 1, 2, 7.25, 100})
		var leaves []*formula
		for _, id := range []string{"a", "b", "c", "d"} {
			v := number.Draw(t, id)
			full["x."+id] = facts.Fact{ID: "x." + id, Known: true, SI: v}
			known := facts.Fact{ID: "x." + id, Known: true, SI: v}
			switch rapid.IntRange(0, 3).Draw(t, id+" is") {
			case 1:
				known = facts.Fact{ID: "x." + id, Missing: []string{"x." + id}}
			case 2:
				bound := v - rapid.SampledFrom([]float64{0, 0.5, 10}).Draw(t, id+" bound")
				known = facts.Fact{ID: "x." + id, Missing: []string{"x." + id}, AtLeast: &bound}
			case 3: // all is given, and the method has no answer
				known = facts.Fact{ID: "x." + id, Because: "no curve"}
			}
			partial["x."+id] = known
			leaves = append(leaves, leafOf("x."+id, ""))
		}
		f := drawNumber(t, leaves, 3)
		compareWith(t, f, full, partial)
		g := drawYesNo(t, leaves, 3)
		compareWith(t, g, full, partial)
	})
}

func drawNumber(t *rapid.T, leaves []*formula, depth int) *formula {
	if depth == 0 || rapid.Bool().Draw(t, "leaf") {
		return rapid.SampledFrom(leaves).Draw(t, "which")
	}
	op := rapid.SampledFrom([]string{"times", "plus", "minus", "ratio", "largest", "smallest", "either"}).Draw(t, "op")
	a, b := drawNumber(t, leaves, depth-1), drawNumber(t, leaves, depth-1)
	if op == "either" {
		return mustCombine(t, op, drawYesNo(t, leaves, depth-1), a, b)
	}
	return mustCombine(t, op, a, b)
}

func drawYesNo(t *rapid.T, leaves []*formula, depth int) *formula {
	if depth == 0 {
		return mustCombine(t, "more_than", leaves[0], leaves[1])
	}
	switch op := rapid.SampledFrom([]string{"more_than", "at_least", "no", "all", "any"}).Draw(t, "op"); op {
	case "no":
		return mustCombine(t, op, drawYesNo(t, leaves, depth-1))
	case "all", "any":
		return mustCombine(t, op, drawYesNo(t, leaves, depth-1), drawYesNo(t, leaves, depth-1))
	default:
		return mustCombine(t, op, drawNumber(t, leaves, depth-1), drawNumber(t, leaves, depth-1))
	}
}

func compareWith(t *rapid.T, f *formula, full, partial someValues) {
	truth, wrong := f.evaluate(full)
	if wrong != nil {
		return // a division by zero, void as such
	}
	got, wrong := f.evaluate(partial)
	if wrong != nil {
		// Logic that was decided early with all known looked further with less
		// known, and met a division by zero there: void, which is never a pass.
		return
	}
	if !truth.known {
		t.Fatalf("%s is unknown with everything known", f.words(nil))
	}
	switch {
	case got.known && f.kind == number && !near(got.si, truth.si),
		got.known && f.kind == yesNo && got.yes != truth.yes:
		t.Fatalf("%s: %+v, and with all known %+v", f.words(partial), got, truth)
	case !got.known && len(got.missing) == 0 && got.because == "", got.known && got.because != "":
		t.Fatalf("%s: known %v, misses nothing, because %q", f.words(partial), got.known, got.because)
	case f.kind == number && (above(got.low, truth.si) || above(truth.si, got.high)):
		if math.Abs(truth.si) > 1e-12 { // cancellation leaves no digits to compare
			t.Fatalf("%s: %v lies outside %v to %v", f.words(full), truth.si, got.low, got.high)
		}
	}
}

func TestUnitAlgebra(t *testing.T) {
	v, a, r, area := leafOf("x.v", "V"), leafOf("x.a", "A"), leafOf("x.r", "ohm"), leafOf("x.area", "mm2")
	share, n, cold, gap := leafOf("x.s", "%"), leafOf("x.n", ""), leafOf("x.t", "degC"), leafOf("x.k", "K")
	for _, test := range []struct {
		name, op string
		of       []*formula
		unit     string // "" with wrong set: refused
		wrong    string
	}{
		{"power", "times", []*formula{v, a}, "W", ""},
		{"drop", "times", []*formula{a, r}, "V", ""},
		{"a share of a voltage", "times", []*formula{share, v}, "V", ""},
		{"a share and a factor", "times", []*formula{n, share}, "%", ""},
		{"volt per ampere", "ratio", []*formula{v, a}, "ohm", ""},
		{"volt per volt", "ratio", []*formula{v, v}, "", ""},
		{"half an area", "ratio", []*formula{area, n}, "mm2", ""},
		{"a temperature and a difference", "plus", []*formula{cold, gap}, "degC", ""},
		{"between two temperatures", "minus", []*formula{cold, cold}, "K", ""},
		{"two temperatures", "plus", []*formula{cold, cold}, "", "do not go together"},
		{"a factor on a temperature", "times", []*formula{n, cold}, "", "cannot be multiplied"},
		{"volts and amperes", "plus", []*formula{v, a}, "", "do not go together"},
		{"the larger of volts and amperes", "largest", []*formula{v, a}, "", "cannot be compared"},
		{"nothing", "plus", nil, "", "the list is empty"},
		{"yes and a voltage", "all", []*formula{v}, "", "takes yes/nos"},
	} {
		t.Run(test.name, func(t *testing.T) {
			f, wrong := combine(test.op, test.of, source.Range{})
			switch {
			case test.wrong != "":
				if wrong == nil || !strings.Contains(wrong.message, test.wrong) {
					t.Errorf("%+v, want a fault with %q", wrong, test.wrong)
				}
			case wrong != nil:
				t.Error(wrong.message)
			case f.unit.Symbol != test.unit:
				t.Errorf("unit %q, want %q", f.unit.Symbol, test.unit)
			}
		})
	}
}

// FuzzRecords decodes arbitrary terms as records: whatever a rule answers, the
// judge never panics, a fault has a place, and a record without one is complete.
func FuzzRecords(f *testing.F) {
	for _, s := range []string{
		`{"about": "x.v", "is": {"id": "x.v", "unit": "V"}, "at_most": {"op": "times", "of": [[2, {"id": "x.v", "unit": "V"}]], "at": "rule.rego:1:2"}}`,
		`{"about": "x", "all_equal": []}`,
		`{"about": "x", "is_true": {"op": "one_of", "of": [{"id": "x.w", "unit": "word"}, ["a", 1, null]], "at": ""}, "because": "x"}`,
		`{"about": "x", "is": {"op": "lookup", "of": ["t", [{"op": "number", "of": [3, "degC"], "at": "::"}]], "at": "a:b:c"}, "between": [1, 2]}`,
		`{"about": null, "when": {"op": "no", "of": [], "at": ":1:1"}, "also": 3, "say": "{is"}`,
		`{"about": "x", "is": {"op": "either", "of": [true, 1, 2], "at": "r:1:1"}, "equals": 1e308}`,
		`[[[[1]]]]`, `{"a": {1, 2}}`, `{{"about": "x"}: 1}`, `"x"`, `null`, `{"about": "x", "does_not_apply": "` + strings.Repeat("y", 600) + `"}`,
	} {
		f.Add(s)
	}
	t := &table{name: "t", axes: []axis{{name: "ambient", kind: number, unit: quantity.MustLookup("degC"), match: "up_to"}}, unit: bare,
		rows: []row{{at: []cell{{si: 300}}, value: cell{si: 1}}}}
	leaves := map[string]leaf{
		"x.v": {kind: number, unit: quantity.MustLookup("V"), text: "V"},
		"x.w": {kind: word, text: "word"},
		"x.l": {kind: list, unit: quantity.MustLookup("V"), text: "V"},
	}
	vs := someValues{"x.v": {ID: "x.v", Known: true, SI: 3}, "x.w": {ID: "x.w", Kind: facts.Word, Missing: []string{"x.w"}}, "x.l": {ID: "x.l", Kind: facts.List, Known: true, List: []float64{12}}}
	at := source.Range{File: "rule.rego", Start: source.Position{Line: 1, Column: 1}}
	f.Fuzz(func(tt *testing.T, text string) {
		if len(text) > 4096 {
			return
		}
		term, err := ast.ParseTerm(text)
		if err != nil {
			return
		}
		r := reader{leaves: leaves, tables: map[string]*table{"t": t}, rule: at}
		rec := r.record(term)
		switch {
		case rec.fault != nil:
			if !rec.fault.at.Valid() || rec.fault.message == "" {
				tt.Errorf("a fault without place or words: %+v", rec.fault)
			}
		case rec.about == "", rec.relation == "" && rec.because == "", rec.relation != "" && rec.is == nil:
			tt.Errorf("an incomplete record: %+v", rec)
		case rec.is != nil:
			for _, f := range append([]*formula{rec.is}, rec.limits...) {
				v, wrong := f.evaluate(vs)
				if wrong == nil && v.known && f.kind == number && (math.IsNaN(v.si) || math.IsInf(v.si, 0)) {
					tt.Errorf("%s came to %v", f.words(nil), v.si)
				}
				_ = f.words(vs)
			}
		}
	})
}
