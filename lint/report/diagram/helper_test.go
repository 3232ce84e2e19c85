package diagram_test

import (
	"bytes"
	"context"
	"flag"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"

	"stringline/lint"
	"stringline/lint/linttest"
	"stringline/lint/report/diagram"
	"stringline/lint/verdict"
	"stringline/rules"
)

var update = flag.Bool("update", false, "write the golden files instead of comparing with them")

// examplesDate is the day on which the examples are judged.
const examplesDate = "2026-11-25"

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
	texts := map[string]string{}
	top := filepath.Join("..", "..", "..")
	err := fs.WalkDir(os.DirFS(top), "examples", func(name string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() || strings.Contains(name, "/codebooks/") {
			return err
		}
		text, err := os.ReadFile(filepath.Join(top, filepath.FromSlash(name)))
		texts[name] = string(text)
		return err
	})
	if err != nil {
		t.Fatalf("reading the examples: %v", err)
	}
	return texts
}

// judged judges designs.
func judged(t testing.TB, texts map[string]string, paths ...string) []lint.DesignResult {
	t.Helper()
	result, err := lint.Run(context.Background(), lint.Options{
		Disk: linttest.NewDisk(texts), Embedded: rules.Books, WorkingDir: "/", Paths: paths,
		Date: examplesDate, RejectFrom: verdict.Fix, Version: "0.1.0",
	})
	if err != nil {
		t.Fatal(err)
	}
	if len(result.Designs) == 0 {
		t.Fatalf("no design under %v: %v", paths, result.Problems)
	}
	return result.Designs
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
