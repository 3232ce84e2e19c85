package judge_test

import (
	"context"
	"io/fs"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint/facts"
	"stringline/lint/judge"
	"stringline/lint/verdict"
	"stringline/rules"
	"stringline/schema/design"
)

// TestHeld loads every codebook that comes with the program in both ways: with
// all that an author is told (this is the test that holds the files), and as a
// run of the program does. They judge alike.
func TestHeld(t *testing.T) {
	entries, err := fs.ReadDir(rules.Books, ".")
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		t.Run(e.Name(), func(t *testing.T) {
			t.Parallel()
			src := embedded(t, e.Name())
			verdicts := func(src judge.Source) []verdict.Verdict {
				book, problems := judge.Load(context.Background(), src)
				if book == nil {
					t.Fatal(problems)
				}
				d := design.Load(design.Options{Files: src.Files, Path: "common.design.hcl", Parts: []design.PartsGlob{{Glob: "common.parts.hcl"}}, Declares: func(string) (map[string][]design.Attribute, bool) {
					return book.Codebook().Declares(), true
				}})
				if len(d.Problems) > 0 {
					t.Fatal(d.Problems)
				}
				vs, err := judge.New(judge.Options{Books: []*judge.Book{book}}).Judge(context.Background(), facts.New(d))
				if err != nil || len(vs) == 0 {
					t.Fatalf("%d verdicts: %v", len(vs), err)
				}
				return vs
			}
			whole := verdicts(src)
			src.Held = true
			if diff := cmp.Diff(whole, verdicts(src)); diff != "" {
				t.Errorf("held to be checked, the codebook judges otherwise:\n%s", diff)
			}
		})
	}
}
