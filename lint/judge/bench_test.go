package judge_test

import (
	"context"
	"io/fs"
	"testing"

	"stringline/lint/facts"
	"stringline/lint/judge"
	"stringline/rules"
	"stringline/schema/design"
)

// embedded gives the source of an embedded codebook.
func embedded(t testing.TB, name string) judge.Source {
	t.Helper()
	files, err := fs.Sub(rules.Books, name)
	if err != nil {
		t.Fatal(err)
	}
	return judge.Source{Name: name, Files: files, Show: name, Embedded: true}
}

// commonDesign is the example design that the rules of limits have in common.
func commonDesign(b *testing.B) *design.Design {
	b.Helper()
	files := embedded(b, "limits").Files
	d := design.Load(design.Options{Files: files, Path: "common.design.hcl", Parts: []design.PartsGlob{{Glob: "common.parts.hcl"}}})
	if len(d.Problems) > 0 {
		b.Fatal(d.Problems)
	}
	return d
}

func books(b *testing.B) []*judge.Book {
	b.Helper()
	var all []*judge.Book
	for _, name := range []string{"datasheet", "limits"} {
		book, problems := judge.Load(context.Background(), embedded(b, name))
		if len(problems) > 0 {
			b.Fatal(problems)
		}
		all = append(all, book)
	}
	return all
}

// BenchmarkLoad reads, checks and compiles the embedded codebooks.
func BenchmarkLoad(b *testing.B) {
	b.ReportAllocs()
	rules := 0
	for b.Loop() {
		rules = 0
		for _, book := range books(b) {
			rules += len(book.Rules())
		}
	}
	b.ReportMetric(float64(rules), "rules")
}

// BenchmarkFirst judges a design of a structure that was not met before.
func BenchmarkFirst(b *testing.B) {
	loaded, d := books(b), commonDesign(b)
	b.ReportAllocs()
	verdicts := 0
	for b.Loop() {
		vs, err := judge.New(judge.Options{Books: loaded}).Judge(context.Background(), facts.New(d))
		if err != nil {
			b.Fatal(err)
		}
		verdicts = len(vs)
	}
	b.ReportMetric(float64(verdicts), "verdicts")
}

// BenchmarkAgain judges designs of a structure whose records are cached: facts
// and formulas alone.
func BenchmarkAgain(b *testing.B) {
	j, d := judge.New(judge.Options{Books: books(b)}), commonDesign(b)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := j.Judge(context.Background(), facts.New(d)); err != nil {
			b.Fatal(err)
		}
	}
}
