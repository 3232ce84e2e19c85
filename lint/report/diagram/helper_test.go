package diagram_test

import (
	"bytes"
	"flag"
	"os"
	"slices"
	"sync"
	"testing"

	"stringline/lint"
	"stringline/lint/linttest"
	"stringline/lint/report/diagram"
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

// judged judges designs.
func judged(t testing.TB, texts map[string]string, paths ...string) []lint.DesignResult {
	t.Helper()
	return linttest.Judged(t, rules.Books, texts, paths...).Designs
}

func drawn(t testing.TB, d *lint.DesignResult, l diagram.Layout) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := diagram.Draw(&b, d, l); err != nil {
		t.Fatalf("%s: %v", d.File, err)
	}
	return b.Bytes()
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
