package report

import (
	"bytes"
	"encoding/json"
	"math"
	"strings"
	"testing"
	"unicode"

	"github.com/santhosh-tekuri/jsonschema/v6"
	"pgregory.net/rapid"

	"stringline/lint"
	"stringline/lint/verdict"
	"stringline/schema/source"
)

// anyResult draws results that no sane run gives: a report must show them all.
func anyResult(t *rapid.T) *lint.Result {
	word := rapid.OneOf(rapid.String(), rapid.SampledFrom([]string{"", "bank.house", "limits.cold_voltage", "\x1b[2J", "a b", strings.Repeat("long", 40)}))
	number := rapid.OneOf(rapid.Float64(), rapid.SampledFrom([]float64{0, math.NaN(), math.Inf(1), math.Inf(-1), 150, 1e300, -1e-300}))
	unit := rapid.SampledFrom([]string{"V", "A", "%", "degC", "K", "", "word", "yes_no", "no such unit"})
	maybe := func(name string) *float64 {
		if !rapid.Bool().Draw(t, name) {
			return nil
		}
		return ptr(number.Draw(t, name))
	}
	place := func(name string) source.Range {
		line := rapid.IntRange(0, 3).Draw(t, name)
		return source.Range{File: word.Draw(t, name), Start: source.Position{Line: line, Column: line}, End: source.Position{Line: line, Column: line}}
	}
	measured := func(name string) verdict.Measured {
		m := verdict.Measured{ID: word.Draw(t, name), Formula: word.Draw(t, name), Unit: unit.Draw(t, name), Value: maybe(name), AtLeast: maybe(name), Says: word.Draw(t, name)}
		if m.Unit == "word" && rapid.Bool().Draw(t, name) {
			m.Word = ptr(word.Draw(t, name))
		}
		if m.Unit == "yes_no" && rapid.Bool().Draw(t, name) {
			m.Yes = ptr(rapid.Bool().Draw(t, name))
		}
		return m
	}
	one := func(t *rapid.T) verdict.Verdict {
		v := verdict.Verdict{
			Rule: word.Draw(t, "rule"), About: word.Draw(t, "about"), Which: word.Draw(t, "which"),
			Outcome:   rapid.SampledFrom([]verdict.Outcome{verdict.Meets, verdict.Breaks, verdict.Unproven, verdict.Waived, verdict.Void, verdict.DoesNotApply}).Draw(t, "outcome"),
			Grade:     rapid.SampledFrom([]verdict.Grade{verdict.Stop, verdict.Fix, verdict.Advise}).Draw(t, "grade"),
			BookGrade: verdict.Stop, Title: word.Draw(t, "title"), Message: word.Draw(t, "message"),
			Relation: rapid.SampledFrom([]string{"", "at_most", "at_least", "equals", "between", "all_equal", "is_true"}).Draw(t, "relation"),
			Headroom: maybe("headroom"), Because: word.Draw(t, "because"), Remedy: word.Draw(t, "remedy"), Source: word.Draw(t, "source"),
			Missing: rapid.SliceOfN(word, 0, 3).Draw(t, "missing"), Assumed: rapid.SliceOfN(word, 0, 3).Draw(t, "assumed"),
		}
		if rapid.Bool().Draw(t, "is") {
			v.Is = ptr(measured("is"))
		}
		for range rapid.IntRange(0, 3).Draw(t, "limits") {
			v.Limits = append(v.Limits, measured("limit"))
		}
		if s := maybe("spare"); s != nil {
			v.Spare = &verdict.Spare{Value: *s, Unit: unit.Draw(t, "unit")}
		}
		if rapid.Bool().Draw(t, "fault") {
			v.Fault = &verdict.Fault{Message: word.Draw(t, "fault"), At: place("fault")}
			v.Waiver = &verdict.Waiver{Reason: word.Draw(t, "reason"), At: place("waiver")}
			v.At = []source.Range{place("at"), place("at")}
			v.Parameters = []verdict.Parameter{{Name: word.Draw(t, "name"), Value: word.Draw(t, "value"), SetAt: place("set")}}
		}
		return v
	}
	r := run()
	for range rapid.IntRange(0, 2).Draw(t, "designs") {
		r.Designs = append(r.Designs, lint.DesignResult{
			File: word.Draw(t, "file"), Name: word.Draw(t, "name"), Revision: word.Draw(t, "revision"),
			Verdicts: rapid.SliceOfN(rapid.Custom(one), 0, 4).Draw(t, "verdicts"),
			Problems: source.Problems{{Kind: "syntax", Message: word.Draw(t, "problem"), Near: word.Draw(t, "near"), At: place("problem")}},
		})
	}
	return r
}

// TestAnyResult: whatever a run holds, the text has no character that a
// terminal acts on, the JSON fits its schema, and both come out alike twice.
func TestAnyResult(t *testing.T) {
	schema := checkSchema(t)
	rapid.Check(t, func(t *rapid.T) {
		r := anyResult(t)
		opts := Page{Width: rapid.IntRange(-5, 200).Draw(t, "width")}
		var first, second bytes.Buffer
		if err := Text(&first, r, opts); err != nil {
			t.Fatal(err)
		}
		if err := Text(&second, r, opts); err != nil || first.String() != second.String() {
			t.Fatal("two texts differ")
		}
		for _, c := range first.String() {
			if c != '\n' && c != ' ' && !unicode.IsPrint(c) {
				t.Fatalf("%U comes through", c)
			}
		}
		first.Reset()
		if err := JSON(&first, r); err != nil {
			t.Fatal(err)
		}
		if !json.Valid(first.Bytes()) {
			t.Fatalf("no JSON: %s", first.Bytes())
		}
		doc, err := jsonschema.UnmarshalJSON(&first)
		if err != nil {
			t.Fatal(err)
		}
		if err := schema.Validate(doc); err != nil {
			t.Fatal(err)
		}
	})
}
