package report

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint/verdict"
	"stringline/schema/source"
)

func TestPlaces(t *testing.T) {
	at := func(file string, line int) source.Range {
		return source.Range{File: file, Start: source.Position{Line: line, Column: 3}}
	}
	got := places([]source.Range{at("a", 9), at("b", 1), at("a", 2), at("a", 9), {}, at("c", 1), at("b", 7), at("b", 8), at("d", 1), at("d", 2)})
	want := []string{"a:9:3, 2:3", "b:1:3, 7:3, 8:3", "c:1:3", "and 2 more"}
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
