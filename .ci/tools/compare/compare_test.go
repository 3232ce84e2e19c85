// Package compare measures whole processes: one design judged by the program,
// and the same books over the same facts by the engine's own command line.
//
//	go test -bench . -count 10 ./compare | benchstat -col /program -
package compare

import (
	"context"
	"encoding/json"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"testing"

	"stringline/lint/facts"
	"stringline/lint/judge"
	"stringline/rules"
	"stringline/schema/design"
)

// BenchmarkOneDesign runs each program once a round, start-up included. What is
// compared differs in the engine's favour: it is handed the facts ready made and
// never evaluates a formula; the program reads the design, checks the books
// against the schema, computes the facts, judges and writes its report.
func BenchmarkOneDesign(b *testing.B) {
	top, err := filepath.Abs("../../..")
	if err != nil {
		b.Fatal(err)
	}
	bin := b.TempDir()
	build := func(dir, target, name string) string {
		out := filepath.Join(bin, name)
		command := exec.Command("go", "build", "-o", out, target)
		command.Dir = dir
		if text, err := command.CombinedOutput(); err != nil {
			b.Fatalf("building %s: %v\n%s", target, err, text)
		}
		return out
	}
	program := build(top, "./cmd/stringline", "stringline")
	engine := build(filepath.Join(top, ".ci", "tools"), "./engine", "engine")

	const hut = "hut/hut.design.hcl"
	d := design.Load(design.Options{Files: os.DirFS(filepath.Join(top, "examples")), Path: hut, Parts: []design.PartsGlob{{Glob: "parts/*.parts.hcl", From: "hut"}}})
	if len(d.Problems) > 0 {
		b.Fatal(d.Problems.Error())
	}
	system := facts.New(d)
	arguments := []string{"eval", "--format", "json", "--ignore", "*_test.rego", "--ignore", "*.hcl", "--ignore", "*.json"}
	query := "{"
	var input any
	books, err := fs.ReadDir(rules.Books, ".")
	if err != nil {
		b.Fatal(err)
	}
	for i, entry := range books {
		files, _ := fs.Sub(rules.Books, entry.Name())
		book, problems := judge.Load(context.Background(), judge.Source{Name: entry.Name(), Files: files, Embedded: true})
		if book == nil {
			b.Fatal(problems.Error())
		}
		in, err := judge.EngineInput(book, system)
		if err != nil {
			b.Fatal(err)
		}
		// The books see the same tree but for their own parameters.
		if input == nil {
			input = in
		} else if params, ok := in.(map[string]any)["params"].(map[string]any); ok {
			all := input.(map[string]any)["params"].(map[string]any)
			for name, p := range params {
				all[name] = p
			}
		}
		arguments = append(arguments, "--data", filepath.Join(top, "rules", entry.Name()))
		for j, r := range book.Rules() {
			if i+j > 0 {
				query += ", "
			}
			query += `"` + r.ID + `": data.codebooks.` + r.ID + `.check`
		}
	}
	text, err := json.Marshal(input)
	if err != nil {
		b.Fatal(err)
	}
	facts := filepath.Join(bin, "facts.json")
	if err := os.WriteFile(facts, text, 0o600); err != nil {
		b.Fatal(err)
	}
	arguments = append(arguments, "--input", facts, query+"}")

	run := func(b *testing.B, name string, arguments ...string) {
		for b.Loop() {
			command := exec.Command(name, arguments...)
			command.Dir = filepath.Join(top, "examples")
			var said, wrong writer
			command.Stdout = &said
			command.Stderr = &wrong
			if err := command.Run(); err != nil {
				b.Fatalf("%v\n%s\n%.2000s", err, wrong, said)
			}
		}
	}
	b.Run("program=stringline", func(b *testing.B) { run(b, program, "check", "--as", "json", hut) })
	b.Run("program=engine", func(b *testing.B) { run(b, engine, arguments...) })
}

type writer []byte

func (w *writer) Write(p []byte) (int, error) { *w = append(*w, p...); return len(p), nil }
