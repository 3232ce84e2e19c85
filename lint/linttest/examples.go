package linttest

import (
	"context"
	"io/fs"
	"strings"
	"testing"

	"stringline/lint"
	"stringline/lint/verdict"
)

// Date is the day on which tests judge the examples.
const Date = "2026-11-25"

// Texts reads all files of a folder of a tree, by path in the tree.
func Texts(t testing.TB, tree fs.FS, folder string) map[string]string {
	t.Helper()
	texts := map[string]string{}
	err := fs.WalkDir(tree, folder, func(name string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		text, err := fs.ReadFile(tree, name)
		texts[name] = string(text)
		return err
	})
	if err != nil || len(texts) == 0 {
		t.Fatalf("reading the texts of %s: %d read, %v", folder, len(texts), err)
	}
	return texts
}

// WithoutBooks leaves out codebooks of a workshop's own: one from outside needs a
// process of its own, or trust.
func WithoutBooks(texts map[string]string) map[string]string {
	for name := range texts {
		if strings.Contains(name, "/codebooks/") {
			delete(texts, name)
		}
	}
	return texts
}

// Change puts other texts in place: file, what stands there once, what stands there
// instead.
func Change(t testing.TB, texts map[string]string, changes ...[3]string) map[string]string {
	t.Helper()
	for _, c := range changes {
		if n := strings.Count(texts[c[0]], c[1]); n != 1 {
			t.Fatalf("%q stands %d times in %s", c[1], n, c[0])
		}
		texts[c[0]] = strings.Replace(texts[c[0]], c[1], c[2], 1)
	}
	return texts
}

// Options are those of a run over texts by [Date]; embedded are the codebooks that
// come with the program.
func Options(embedded fs.FS, texts map[string]string, paths ...string) lint.Options {
	return lint.Options{Disk: NewDisk(texts), Embedded: embedded, WorkingDir: "/", Paths: paths, Date: Date, RejectFrom: verdict.Fix, Version: "0.1.0"}
}

// Judged runs the whole pipeline over texts; there must be a design.
func Judged(t testing.TB, embedded fs.FS, texts map[string]string, paths ...string) *lint.Result {
	t.Helper()
	r, err := lint.Run(context.Background(), Options(embedded, texts, paths...))
	if err != nil {
		t.Fatal(err)
	}
	if len(r.Designs) == 0 {
		t.Fatalf("no design under %v: %v", paths, r.Problems)
	}
	return r
}

// Bench opens one design of texts, until the test ends.
func Bench(t testing.TB, embedded fs.FS, texts map[string]string, path string, trust ...string) *lint.Bench {
	t.Helper()
	o := Options(embedded, texts, path)
	o.Trust = trust
	bench, err := lint.OpenBench(context.Background(), o)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(bench.Close)
	return bench
}
