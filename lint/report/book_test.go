package report

import (
	"bytes"
	"encoding/json"
	"io"
	"strings"
	"testing"

	"stringline/lint"
	"stringline/lint/verdict"
	"stringline/schema/codebook"
	"stringline/schema/source"
)

// hostileText holds what must not reach a terminal or a Markdown page as it is.
const hostileText = "a\x1b[31m|b` <i> [x](y) \u202e\nc"

func written(t *testing.T, write func(io.Writer) error) string {
	t.Helper()
	var b bytes.Buffer
	if err := write(&b); err != nil {
		t.Fatal(err)
	}
	for _, bad := range []string{"\x1b", "\u202e"} {
		if strings.Contains(b.String(), bad) {
			t.Errorf("the output holds %q:\n%s", bad, b.String())
		}
	}
	return b.String()
}

func testedBooks() []lint.TestedBook {
	return []lint.TestedBook{
		{Asked: "books/county", Report: &lint.BookTest{Book: "county", Version: "1.0.0", Rules: 2,
			Results: []lint.BookTestCase{
				{Rule: "drop", Name: "meets", Passed: true, At: at("books/county/drop/meets.design.hcl", 1, 1, 0)},
				{Rule: "drop", Name: "test_cases: at it", Message: "the case is not true\n" + hostileText, At: at("books/county/drop/rule_test.rego", 9, 1, 0)},
			},
			Mutants: []lint.Mutant{
				{Rule: "drop", Name: "at_most to at_least", Caught: "example", Detail: "meets: breaks"},
				{Rule: "drop", Name: "without when", Caught: "load"},
				{Rule: "drop", Name: "1 x 1.01", Reason: "strings are whole", At: at("books/county/drop/rule.rego", 12, 4, 0)},
				{Rule: "drop", Name: "2 / 1.01 " + hostileText, At: at("books/county/drop/rule.rego", 13, 4, 0)},
				{Rule: "shared", Name: "without factor x", Caught: "Rego test", Detail: "drop: test_cases"},
			},
			Coverage: []lint.Coverage{{Rule: "drop", Reached: 3, Total: 4, Missed: []source.Range{at("books/county/drop/rule.rego", 17, 1, 4)}}},
		}},
		{Asked: "books/broken", Problems: source.Problems{{Kind: "rule", Message: "there is no fact \"voc_cald\"", Near: "voc_cold", At: at("books/broken/r/rule.rego", 11, 40, 0)}}},
	}
}

func TestBookTestsText(t *testing.T) {
	got := written(t, func(w io.Writer) error { return BookTests(w, testedBooks(), Page{}) })
	golden(t, "booktest.txt", []byte(got))
	for line := range strings.Lines(got) {
		if columns(strings.TrimSuffix(line, "\n")) > 80 {
			t.Errorf("a line of more than 80 columns: %s", line)
		}
	}
	narrow := written(t, func(w io.Writer) error { return BookTests(w, testedBooks(), Page{Width: 40}) })
	golden(t, "booktest-40.txt", []byte(narrow))
}

func TestBookTestsJSON(t *testing.T) {
	got := written(t, func(w io.Writer) error { return BookTestsJSON(w, testedBooks(), "0.1.0") })
	golden(t, "booktest.json", []byte(got))
	var d struct {
		Codebooks []struct {
			Summary map[string]int
			Tests   []any
			Mutants []any
		}
		Exit int
	}
	if err := json.Unmarshal([]byte(got), &d); err != nil {
		t.Fatal(err)
	}
	if d.Exit != 2 || d.Codebooks[0].Summary["survived"] != 1 || d.Codebooks[1].Tests == nil || d.Codebooks[1].Mutants == nil {
		t.Errorf("exit %d, %+v", d.Exit, d.Codebooks)
	}
}

// The exit status: 2 where a book could not be loaded or nothing ran, 1 where a
// test failed or a mutant lives, 0 where an equivalent one is all that is left.
func TestExitOfBooks(t *testing.T) {
	all := testedBooks()
	sound := lint.TestedBook{Report: &lint.BookTest{Results: all[0].Report.Results[:1], Mutants: all[0].Report.Mutants[:3]}}
	living := lint.TestedBook{Report: &lint.BookTest{Results: all[0].Report.Results[:1], Mutants: all[0].Report.Mutants}}
	failed := lint.TestedBook{Report: &lint.BookTest{Results: all[0].Report.Results}}
	empty := lint.TestedBook{Report: &lint.BookTest{}}
	for _, test := range []struct {
		name  string
		books []lint.TestedBook
		want  int
	}{
		{"sound", []lint.TestedBook{sound}, 0}, {"a mutant lives", []lint.TestedBook{sound, living}, 1}, {"a test failed", []lint.TestedBook{failed, sound}, 1},
		{"one cannot be loaded", []lint.TestedBook{living, all[1]}, 2}, {"nothing ran", []lint.TestedBook{empty}, 2}, {"none", nil, 2},
	} {
		if got := lint.ExitOfBooks(test.books); got != test.want {
			t.Errorf("%s: exit status %d, want %d", test.name, got, test.want)
		}
	}
}

func explanation() *lint.Explanation {
	in := lint.BookInUse{Name: "county", Version: "1.0.0", Edition: "2023", Digest: "sha256:00", Rules: []lint.RuleInUse{{
		ID: "county.drop", Title: "Drop " + hostileText, Description: "Lamps dim.", Source: "common practice", Remedy: "take a larger conductor",
		Grade: verdict.Stop, BookGrade: verdict.Advise, GradeAt: at("workshop.hcl", 9, 1, 5),
	}}, Parameters: []lint.ParameterInUse{{Name: "drop_max", Unit: "%", Value: ptr(2.0), Text: "2 %", SetAt: at("workshop.hcl", 5, 3, 5)}}}
	page := lint.ParameterPage{ParameterInUse: in.Parameters[0], Default: "3 %", Range: "0 % to 10 %", Means: "largest drop"}
	return &lint.Explanation{
		Whole: true,
		Book: lint.BookPage{BookInUse: in, Jurisdiction: "Fell County", Covers: []string{"690.7"}, CannotJudge: []string{"690.33 " + hostileText},
			Sources: []codebook.Source{{Key: "code", Title: "The code | 2023", Status: "transcribed"}}, Parameters: []lint.ParameterPage{page},
			Attributes: []lint.AttributePage{{Name: "vented", Of: "banks", Kind: "yes or no", Means: "vents outside"}},
			Tables:     []lint.TablePage{{Name: "longest", Title: "Longest run", Source: "code", Status: "read", Unit: "m", Axes: []string{"size (mm2, down to)"}, Rows: 4}}},
		Rules: []lint.RulePage{{RuleInUse: in.Rules[0], Each: "cable_runs", EachMeans: "pairs of conductors", Cites: []codebook.Source{{Title: "The code | 2023", Status: "transcribed"}},
			Parameters: []lint.ParameterPage{page}, Equivalent: []lint.Equivalent{{Mutant: "1 | 1.01", Reason: "strings are whole"}}, Rego: "package codebooks.county.drop\n\n# ``` " + "\x1b[0m" + "\ncheck contains {\n\t\"about\": r.id,\n}\n", At: at("books/county/drop/rule.rego", 9, 1, 0)}},
	}
}

func TestExplainPages(t *testing.T) {
	golden(t, "explain.txt", []byte(written(t, func(w io.Writer) error { return Explain(w, explanation(), Page{}) })))
	got := written(t, func(w io.Writer) error { return ExplainMarkdown(w, explanation()) })
	golden(t, "explain.md", []byte(got))
	for line := range strings.Lines(got) {
		if cells := strings.Count(strings.ReplaceAll(line, `\|`, ""), "|"); strings.HasPrefix(line, "|") && cells != 3 {
			t.Errorf("a row of %d edges: %s", cells, line)
		}
	}
	if strings.Contains(strings.ReplaceAll(got, `\<`, ""), "<i>") || strings.Contains(strings.ReplaceAll(got, `\[`, ""), "[x]") {
		t.Errorf("a text of the codebook is markup:\n%s", got)
	}
}

func TestShelfPages(t *testing.T) {
	s := &lint.Shelf{Workshop: "workshop.hcl", Books: []lint.BookInUse{explanation().Book.BookInUse}, AtHand: []string{"marine"}}
	golden(t, "shelf.txt", []byte(written(t, func(w io.Writer) error { return Shelf(w, s, Page{}) })))
	golden(t, "shelf.json", []byte(written(t, func(w io.Writer) error { return ShelfJSON(w, s, "0.1.0") })))
	if s.Exit() != 0 || (&lint.Shelf{}).Exit() != 2 {
		t.Errorf("exit statuss %d and %d", s.Exit(), (&lint.Shelf{}).Exit())
	}
}
