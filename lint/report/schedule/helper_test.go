package schedule_test

import (
	"bytes"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"sync"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint"
	"stringline/lint/linttest"
	"stringline/rules"
)

var update = flag.Bool("update", false, "write the golden files instead of comparing with them")

// allExamples judges the examples once for all tests of this package, which use
// them one after the other.
var allExamples struct {
	once    sync.Once
	designs []lint.DesignResult
}

func examples(t testing.TB) []lint.DesignResult {
	t.Helper()
	allExamples.once.Do(func() { allExamples.designs = judged(t, exampleTexts(t), "examples") })
	if len(allExamples.designs) < 8 {
		t.Fatalf("only %d examples", len(allExamples.designs))
	}
	return allExamples.designs
}

// exampleTexts reads the examples by path from the top level.
func exampleTexts(t testing.TB) map[string]string {
	t.Helper()
	return linttest.WithoutBooks(linttest.Texts(t, os.DirFS("../../.."), "examples"))
}

func judged(t testing.TB, texts map[string]string, paths ...string) []lint.DesignResult {
	t.Helper()
	return linttest.Judged(t, rules.Books, texts, paths...).Designs
}

func example(t testing.TB, name string) *lint.DesignResult {
	t.Helper()
	all := examples(t)
	i := slices.IndexFunc(all, func(d lint.DesignResult) bool { return d.File == "examples/"+name })
	if i < 0 {
		t.Fatalf("no example %s", name)
	}
	return &all[i]
}

// sheds judges designs together, which costs less; the results stand in the order
// of the texts.
func sheds(t testing.TB, texts []string) []lint.DesignResult {
	t.Helper()
	files := map[string]string{}
	for i, text := range texts {
		files[fmt.Sprintf("shed/shed-%03d.design.hcl", i)] = text
	}
	found := judged(t, files, "shed")
	if len(found) != len(texts) {
		t.Fatalf("%d of %d designs were judged", len(found), len(texts))
	}
	return found
}

// shed judges one design by itself.
func shed(t testing.TB, text string) *lint.DesignResult {
	t.Helper()
	d := judged(t, map[string]string{"shed/shed.design.hcl": text}, "shed/shed.design.hcl")[0]
	if d.System == nil {
		t.Fatalf("the design could not be read: %v", d.Problems)
	}
	return &d
}

func golden(t *testing.T, name string, got []byte) {
	t.Helper()
	name = filepath.Join("testdata", name)
	got = bytes.ReplaceAll(got, []byte("\r\n"), []byte("\n")) // as git keeps texts
	if *update {
		if err := os.WriteFile(name, got, 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	want, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(want), string(got)); diff != "" {
		t.Errorf("%s differs (-want +got):\n%s", name, diff)
	}
}
