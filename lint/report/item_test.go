package report

import (
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint"
	"stringline/lint/verdict"
	"stringline/schema/source"
)

func TestPlaces(t *testing.T) {
	at := func(file string, line int) source.Range {
		return source.Range{File: file, Start: source.Position{Line: line, Column: 3}}
	}
	got := places([]source.Range{at("a", 9), at("b", 1), at("a", 2), at("a", 9), {}, at("c", 1), at("b", 7), at("b", 8), at("d", 1), at("d", 2)})
	want := []string{"a:9:3,", "2:3", " b:1:3,", "7:3,", "8:3", " c:1:3", " and 2 more"}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("places (-want +got):\n%s", diff)
	}
}

func TestSentence(t *testing.T) {
	for message, want := range map[string]string{
		"it is not rated for direct current": "It is not rated for direct current.",
		"Whole already.":                     "Whole already.",
		"µ is a letter too":                  "Μ is a letter too.",
		"what, then?":                        "What, then?",
		"at 24 V (set)":                      "At 24 V (set).",
		"":                                   "Title.",
	} {
		if got := sentence(&verdict.Verdict{Message: message, Title: "title"}); got != want {
			t.Errorf("%q reads %q, want %q", message, got, want)
		}
	}
}

// TestLongPageSaysItAgain: what the head of a long page says stands at its foot too,
// once; a short page says it once in all.
func TestLongPageSaysItAgain(t *testing.T) {
	for verdicts, want := range map[int]int{3: 1, 200: 2} {
		d := lint.DesignResult{File: "a.design.hcl", Name: "A"}
		for i := range verdicts {
			value, limit, left := float64(i), 1000.0, 1-float64(i)/1000
			d.Verdicts = append(d.Verdicts, verdict.Verdict{
				Rule: "limits.x", About: fmt.Sprint("bank.b", i), Outcome: verdict.Meets, Grade: verdict.Fix, Relation: "at_most",
				Is: &verdict.Measured{ID: "bank.b.x", Unit: "A", Value: &value}, Limits: []verdict.Measured{{ID: "bank.b.y", Unit: "A", Value: &limit}},
				Spare: &verdict.Spare{Value: limit - value, Unit: "A"}, Headroom: &left,
			})
		}
		r := &lint.Result{Designs: []lint.DesignResult{d}, Summary: lint.Summary{Designs: 1, Rules: 1, Judgements: verdicts, Meets: verdicts}}
		var b strings.Builder
		if err := Text(&b, r, Page{Width: 80}); err != nil {
			t.Fatal(err)
		}
		if got := strings.Count(b.String(), "Nothing found against it."); got != want {
			t.Errorf("%d verdicts: the verdict stands %d times, want %d:\n%s", verdicts, got, want, b.String()[:200])
		}
	}
}
