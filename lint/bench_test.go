package lint_test

import (
	"context"
	"fmt"
	"io/fs"
	"os"
	"runtime"
	"strings"
	"sync"
	"testing"

	"stringline/lint"
	"stringline/lint/facts"
	"stringline/lint/judge"
	"stringline/lint/linttest"
	"stringline/lint/verdict"
	"stringline/rules"
	"stringline/schema/design"
)

// hutTexts gives the hut's workshop with n copies of its design, each with
// another charge current, so that no two have the same facts.
func hutTexts(b testing.TB, n int) map[string]string {
	b.Helper()
	texts := map[string]string{}
	for _, name := range []string{"workshop.hcl", "hut.design.hcl", "parts/devices.parts.hcl", "parts/panels.parts.hcl", "parts/protection.parts.hcl"} {
		text, err := os.ReadFile("../examples/hut/" + name)
		if err != nil {
			b.Fatal(err)
		}
		texts["hut/"+name] = string(text)
	}
	text := texts["hut/hut.design.hcl"]
	const setting = `charge_current           = "80 A"`
	if !strings.Contains(text, setting) {
		b.Fatal("the hut's charge current stands otherwise now")
	}
	delete(texts, "hut/hut.design.hcl")
	for i := range n {
		texts[fmt.Sprintf("hut/%04d.design.hcl", i)] = strings.Replace(text, setting, fmt.Sprintf(`charge_current           = "%g A"`, 80-float64(i)/100), 1)
	}
	return texts
}

// BenchmarkRun is the whole pipeline in one process: codebooks loaded anew each
// round, designs=1 is the baseline for designs=100, which shares one structure.
func BenchmarkRun(b *testing.B) {
	for _, n := range []int{1, 100, 1000} {
		b.Run(fmt.Sprintf("designs=%d", n), func(b *testing.B) {
			disk := linttest.NewDisk(hutTexts(b, n))
			b.ReportAllocs()
			for b.Loop() {
				r, err := lint.Run(context.Background(), lint.Options{
					Disk: disk, Embedded: rules.Books, WorkingDir: "/", Paths: []string{"hut"},
					Date: examplesDate, RejectFrom: verdict.Fix, WithoutSystems: true,
				})
				if err != nil || r.Exit != 0 || r.Summary.Designs != n {
					b.Fatalf("%v, exit %d", err, r.Exit)
				}
			}
			var memory runtime.MemStats
			runtime.GC()
			runtime.ReadMemStats(&memory)
			b.ReportMetric(float64(memory.HeapAlloc)/(1<<20), "MiB-kept") // after the run: flat, however many designs
		})
	}
}

// BenchmarkLoadBooks loads every codebook that comes with the program.
func BenchmarkLoadBooks(b *testing.B) {
	entries, err := fs.ReadDir(rules.Books, ".")
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		var all sync.WaitGroup
		for _, e := range entries {
			files, err := fs.Sub(rules.Books, e.Name())
			if err != nil {
				b.Fatal(err)
			}
			all.Go(func() {
				if book, problems := judge.Load(context.Background(), judge.Source{Name: e.Name(), Files: files, Show: e.Name(), Embedded: true, Held: true}); book == nil {
					b.Error(problems)
				}
			})
		}
		all.Wait()
	}
}

// BenchmarkJudgeByAll judges one design by every codebook, again with the records
// of its structure at hand: what sweep and fit do.
func BenchmarkJudgeByAll(b *testing.B) {
	entries, err := fs.ReadDir(rules.Books, ".")
	if err != nil {
		b.Fatal(err)
	}
	var books []*judge.Book
	for _, e := range entries {
		files, err := fs.Sub(rules.Books, e.Name())
		if err != nil {
			b.Fatal(err)
		}
		book, problems := judge.Load(context.Background(), judge.Source{Name: e.Name(), Files: files, Show: e.Name(), Embedded: true})
		if book == nil {
			b.Fatal(problems)
		}
		books = append(books, book)
	}
	j := judge.New(judge.Options{Books: books})
	tree, err := linttest.NewDisk(hutTexts(b, 1)).Root("/hut")
	if err != nil {
		b.Fatal(err)
	}
	d := design.Load(design.Options{Files: tree, Path: "0000.design.hcl", Parts: []design.PartsGlob{{Glob: "parts/*.parts.hcl", From: "."}}})
	var weathers facts.Weathers
	if _, err := j.Judge(context.Background(), facts.NewWith(d, &weathers)); err != nil { // the structure is met, the sky read
		b.Fatal(err)
	}
	b.ReportAllocs()
	made := 0
	for b.Loop() {
		verdicts, err := j.Judge(context.Background(), facts.NewWith(d, &weathers))
		if made = len(verdicts); err != nil || made < 300 {
			b.Fatalf("%d verdicts: %v", made, err)
		}
	}
	b.ReportMetric(float64(made), "verdicts")
}

// BenchmarkReadDesign is guard, parse and decoding of one design with its parts.
func BenchmarkReadDesign(b *testing.B) {
	disk := linttest.NewDisk(hutTexts(b, 1))
	tree, err := disk.Root("/hut")
	if err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		d := design.Load(design.Options{Files: tree, Path: "0000.design.hcl", Parts: []design.PartsGlob{{Glob: "parts/*.parts.hcl", From: "."}}})
		if len(d.Problems) > 0 {
			b.Fatal(d.Problems)
		}
	}
}
