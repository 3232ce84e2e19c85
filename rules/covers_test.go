package rules_test

import (
	"context"
	"io/fs"
	"regexp"
	"slices"
	"strings"
	"testing"

	"stringline/lint/judge"
	"stringline/schema/codebook"
)

// clausePattern finds clauses in the texts of rules: numbers with points, and what
// stands in brackets behind them, such as 690.31(B)(1), 712.433.1 or 11.4.2.
var clausePattern = regexp.MustCompile(`\b[0-9]+(?:\.[0-9]+)+(?:\([0-9A-Za-z]+\))*`)

// named tells whether a text names a clause whole: 690.7 is not named by 690.71.
func named(text, clause string) bool {
	for rest := text; ; {
		before, after, found := strings.Cut(rest, clause)
		if !found {
			return false
		}
		left := before == "" || !strings.ContainsAny(before[len(before)-1:], "0123456789.")
		right := after == "" || !strings.ContainsAny(after[:1], "0123456789(") && !(len(after) > 1 && after[0] == '.' && after[1] >= '0' && after[1] <= '9')
		if left && right {
			return true
		}
		rest = after
	}
}

// within tells whether a clause is one of a list, or stands below one.
func within(clause string, list []string) bool {
	return slices.ContainsFunc(list, func(c string) bool {
		return clause == c || strings.HasPrefix(clause, c+"(") || strings.HasPrefix(clause, c+".")
	})
}

// claimed lists what a codebook claims to cover and does not, and what its rules
// name and it does not claim. Figures that are no clauses of the book (its clauses
// begin otherwise) do not count.
func claimed(covers []string, sources map[string]string) (unnamed, unclaimed []string) {
	heads := map[string]bool{}
	for _, c := range covers {
		head, _, _ := strings.Cut(c, ".")
		heads[head] = true
		if !slices.ContainsFunc(mapValues(sources), func(text string) bool { return named(text, c) }) {
			unnamed = append(unnamed, c)
		}
	}
	for rule, text := range sources {
		for _, c := range clausePattern.FindAllString(text, -1) {
			if head, _, _ := strings.Cut(c, "."); heads[head] && !within(c, covers) {
				unclaimed = append(unclaimed, rule+": "+c)
			}
		}
	}
	slices.Sort(unclaimed)
	return unnamed, unclaimed
}

func mapValues(m map[string]string) []string {
	var all []string
	for _, v := range m {
		all = append(all, v)
	}
	return all
}

// TestCovers holds every codebook that lists clauses to its list: each clause that
// it covers is named by a rule's source, each clause of the code that a rule's
// source names is covered, every rule that cites a text names a clause, and what
// cannot be judged is said.
func TestCovers(t *testing.T) {
	lists := 0
	for name, files := range books(t) {
		own := codebook.Load(files, codebook.FileName, nil)
		if len(own.Covers) == 0 {
			continue
		}
		lists++
		book, problems := judge.Load(context.Background(), judge.Source{Name: name, Files: files, Show: "rules/" + name, Embedded: true})
		if book == nil {
			t.Fatal(problems)
		}
		sources := map[string]string{}
		for _, r := range book.Rules() {
			sources[r.ID] = r.Source
			if len(r.Cites) > 0 && !slices.ContainsFunc(own.Covers, func(c string) bool { return named(r.Source, c) }) {
				t.Errorf("%s names no clause that %s covers: %q", r.ID, name, r.Source)
			}
		}
		unnamed, unclaimed := claimed(own.Covers, sources)
		for _, c := range unnamed {
			t.Errorf("%s covers %s, and no rule's source names it", name, c)
		}
		for _, c := range unclaimed {
			t.Errorf("%s is not among what %s covers", c, name)
		}
		if len(own.CannotJudge) == 0 {
			t.Errorf("%s says of no clause that it cannot judge it", name)
		}
	}
	if lists == 0 {
		t.Error("no codebook lists what it covers")
	}
}

// TestClaimed holds the comparison itself.
func TestClaimed(t *testing.T) {
	sources := map[string]string{"a": "NEC 2023 690.71, 690.8(A)(1); factor 1.25", "b": "NEC 2023 690.9(B)."}
	unnamed, unclaimed := claimed([]string{"690.7", "690.8(A)(1)", "690.9"}, sources)
	if !slices.Equal(unnamed, []string{"690.7", "690.9"}) {
		t.Errorf("unnamed: %v", unnamed)
	}
	if !slices.Equal(unclaimed, []string{"a: 690.71"}) {
		t.Errorf("unclaimed: %v", unclaimed)
	}
}

// TestAsked holds that a rule reads every attribute that a codebook asks designs
// for, and every parameter: what is answered and not read would be a false comfort.
func TestAsked(t *testing.T) {
	for name, files := range books(t) {
		var rego strings.Builder
		for _, pattern := range []string{"*/rule.rego", "shared/*.rego"} {
			found, err := fs.Glob(files, pattern)
			if err != nil {
				t.Fatal(err)
			}
			for _, file := range found {
				text, err := fs.ReadFile(files, file)
				if err != nil {
					t.Fatal(err)
				}
				rego.Write(text)
			}
		}
		own := codebook.Load(files, codebook.FileName, nil)
		for _, a := range own.Attributes {
			if !regexp.MustCompile(`\.declared\.` + a.Name + `\b`).MatchString(rego.String()) {
				t.Errorf("%s asks for %s of %s, and no rule reads it", name, a.Name, a.Of)
			}
		}
		for _, p := range own.Parameters {
			if !regexp.MustCompile(`\.params\.` + p.Name + `\b`).MatchString(rego.String()) {
				t.Errorf("%s has the parameter %s, and no rule reads it", name, p.Name)
			}
		}
	}
}
