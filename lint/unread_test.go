package lint_test

import (
	"context"
	"encoding/json"
	"io/fs"
	"os"
	"path"
	"slices"
	"strings"
	"testing"

	"stringline/lint/facts"
	"stringline/lint/judge"
	"stringline/rules"
	"stringline/schema/design"
)

// waiting is one fact that nothing reads yet.
type waiting struct {
	Fact   string `json:"fact"`   // COLLECTION.NAME of the fact table
	Reader string `json:"reader"` // the fact, rule or report that will read it
	Issue  int    `json:"issue"`  // that brings it
}

func waitingList(t *testing.T) map[string]waiting {
	t.Helper()
	text, err := os.ReadFile("../testdata/waiting.json")
	if err != nil {
		t.Fatal(err)
	}
	var list []waiting
	if err := json.Unmarshal(text, &list); err != nil {
		t.Fatal(err)
	}
	byFact := map[string]waiting{}
	for _, w := range list {
		if _, twice := byFact[w.Fact]; twice || w.Reader == "" || w.Issue < 3 || w.Issue > 6 {
			t.Errorf("testdata/waiting.json: %+v stands twice, or names no reader or no later issue", w)
		}
		byFact[w.Fact] = w
	}
	return byFact
}

// embeddedBooks loads the codebooks that come with the program.
func embeddedBooks(t *testing.T) []*judge.Book {
	t.Helper()
	entries, err := fs.ReadDir(rules.Books, ".")
	if err != nil {
		t.Fatal(err)
	}
	var books []*judge.Book
	for _, e := range entries {
		files, err := fs.Sub(rules.Books, e.Name())
		if err != nil {
			t.Fatal(err)
		}
		book, problems := judge.Load(context.Background(), judge.Source{Name: e.Name(), Files: files, Show: e.Name(), Embedded: true})
		if book == nil {
			t.Fatal(problems)
		}
		books = append(books, book)
	}
	return books
}

// TestNothingUnread: every fact, attributes included, is read by a rule or by
// another fact in at least one example, or waits, by name, for what will read it.
func TestNothingUnread(t *testing.T) {
	read := map[string]bool{}
	names := map[string]string{} // fact id → COLLECTION.NAME
	j := judge.New(judge.Options{Books: embeddedBooks(t)})
	for name := range exampleTexts(t) {
		if !strings.HasSuffix(name, ".design.hcl") {
			continue
		}
		shop := path.Dir(name)
		d := design.Load(design.Options{Files: os.DirFS(".."), Path: name, Parts: []design.PartsGlob{{Glob: "parts/*.parts.hcl", From: shop}}})
		if d.Head == nil {
			t.Fatal(d.Problems)
		}
		s := facts.New(d)
		for _, c := range facts.Collections() {
			for _, subject := range s.Subjects(c.Name) {
				for _, e := range c.Entries {
					id := subject.ID() + "." + e.Name
					names[id] = c.Name + "." + e.Name
					w, ok := s.Work(id)
					if !ok {
						t.Fatalf("%s: no fact %s", name, id)
					}
					for _, in := range w.Inputs {
						read[in.Fact.ID] = true
					}
				}
			}
		}
		asked, err := j.Reads(context.Background(), s)
		if err != nil {
			t.Fatal(err)
		}
		for _, ids := range asked {
			for _, id := range ids {
				read[id] = true
			}
		}
	}
	byName := map[string]bool{}
	for id, name := range names {
		byName[name] = byName[name] || read[id]
	}
	waits := waitingList(t)
	for _, c := range facts.Collections() {
		for _, e := range c.Entries {
			name := c.Name + "." + e.Name
			_, waiting := waits[name]
			isRead, known := byName[name]
			switch {
			case !known:
				t.Errorf("no example has a subject with %s", name)
			case !isRead && !waiting:
				t.Errorf("nothing reads %s: let a rule or a fact read it, strike it, or say in testdata/waiting.json what will", name)
			case isRead && waiting:
				t.Errorf("%s is read now: strike it from testdata/waiting.json", name)
			}
			delete(waits, name)
		}
	}
	for name := range waits {
		t.Errorf("testdata/waiting.json: there is no fact %s", name)
	}
}

// TestCoverage: each of the 28 items of common trade practice leads to rules that
// exist, or to a stated gap.
func TestCoverage(t *testing.T) {
	text, err := os.ReadFile("../testdata/coverage.json")
	if err != nil {
		t.Fatal(err)
	}
	var items []struct {
		Item  int
		Title string
		Rules []string
		Gap   string
	}
	if err := json.Unmarshal(text, &items); err != nil {
		t.Fatal(err)
	}
	var known []string
	for _, b := range embeddedBooks(t) {
		for _, r := range b.Rules() {
			known = append(known, r.ID)
		}
	}
	const practiceItems = 28
	if len(items) != practiceItems {
		t.Errorf("%d items, want %d", len(items), practiceItems)
	}
	for i, it := range items {
		if it.Item != i+1 || it.Title == "" {
			t.Errorf("item %d stands as %d %q", i+1, it.Item, it.Title)
		}
		if len(it.Rules) == 0 && !strings.Contains(it.Gap, "issue ") {
			t.Errorf("item %d has no rule, and its gap names no issue: %q", it.Item, it.Gap)
		}
		for _, r := range it.Rules {
			if !slices.Contains(known, r) {
				t.Errorf("item %d names %s, which is no rule", it.Item, r)
			}
		}
	}
}
