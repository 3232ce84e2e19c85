// Package compare measures whole processes: designs judged by the program, and
// the same books over the same facts by the engine's own command line.
//
//	go test -bench . -count 10 ./compare | benchstat -col /program -
package compare

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"stringline/lint/facts"
	"stringline/lint/judge"
	"stringline/rules"
	"stringline/schema/design"
)

// What is compared differs in the engine's favour: it is handed the facts ready
// made and never evaluates a formula; the program reads the designs, checks the
// books, computes the facts, judges and writes its report.

const hut = "hut/hut.design.hcl"

// BenchmarkOneDesign judges one design by the codebooks that every design meets
// and the one that its workshop names, start-up included.
func BenchmarkOneDesign(b *testing.B) {
	p := build(b)
	input, query := p.question(b)
	arguments := []string{"eval", "--format", "json", "--input", p.write(b, "facts.json", input), "--data", p.books(b), query}
	b.Run("program=stringline", func(b *testing.B) {
		p.run(b, filepath.Join(p.top, "examples"), "stringline", "check", "--as", "json", hut)
	})
	b.Run("program=engine", func(b *testing.B) { p.run(b, p.top, "engine", arguments...) })
}

// BenchmarkBatch judges a hundred designs, each with numbers of its own, by all
// codebooks in one process; the engine by its command for many inputs.
func BenchmarkBatch(b *testing.B) {
	const designs = 100
	p := build(b)
	input, query := p.question(b)
	folder := p.books(b)
	batch := "package batch\n\nall := " + query + "\n"
	if err := os.WriteFile(filepath.Join(folder, "batch.rego"), []byte(batch), 0o600); err != nil {
		b.Fatal(err)
	}
	var inputs []string
	for i := range designs {
		inputs = append(inputs, p.write(b, fmt.Sprintf("facts-%03d.json", i), input))
	}
	workshop := filepath.Join(b.TempDir(), "hut")
	if err := os.CopyFS(workshop, os.DirFS(filepath.Join(p.top, "examples", "hut"))); err != nil {
		b.Fatal(err)
	}
	text, err := os.ReadFile(filepath.Join(workshop, "hut.design.hcl"))
	if err != nil {
		b.Fatal(err)
	}
	const setting = `charge_current           = "80 A"`
	if !strings.Contains(string(text), setting) {
		b.Fatal("the hut's charge current stands otherwise now")
	}
	for i := range designs {
		changed := strings.Replace(string(text), setting, fmt.Sprintf(`charge_current           = "%g A"`, 80-float64(i)/100), 1)
		if err := os.WriteFile(filepath.Join(workshop, fmt.Sprintf("%03d.design.hcl", i)), []byte(changed), 0o600); err != nil {
			b.Fatal(err)
		}
	}
	for _, name := range []string{"hut.design.hcl", "hut-broken.design.hcl"} {
		if err := os.Remove(filepath.Join(workshop, name)); err != nil {
			b.Fatal(err)
		}
	}
	all := "parts = [\"parts/*.parts.hcl\"]\n"
	for _, name := range names(b) {
		all += fmt.Sprintf("codebook %q {}\n", name)
	}
	if err := os.WriteFile(filepath.Join(workshop, "workshop.hcl"), []byte(all), 0o600); err != nil {
		b.Fatal(err)
	}
	b.Run("program=stringline", func(b *testing.B) { p.run(b, workshop, "stringline", "check", "--as", "json", ".") })
	b.Run("program=engine", func(b *testing.B) {
		p.run(b, p.top, "engine", append([]string{"exec", "--bundle", folder, "--decision", "batch/all"}, inputs...)...)
	})
}

// programs are both, built into one folder.
type programs struct{ top, bin string }

func build(b *testing.B) *programs {
	b.Helper()
	top, err := filepath.Abs("../../..")
	if err != nil {
		b.Fatal(err)
	}
	p := &programs{top: top, bin: b.TempDir()}
	for _, one := range []struct{ dir, target, name string }{
		{top, "./cmd/stringline", "stringline"},
		{filepath.Join(top, ".ci", "tools"), "./engine", "engine"},
	} {
		command := exec.Command("go", "build", "-o", filepath.Join(p.bin, one.name), one.target)
		command.Dir = one.dir
		if text, err := command.CombinedOutput(); err != nil {
			b.Fatalf("building %s: %v\n%s", one.target, err, text)
		}
	}
	return p
}

func (p *programs) write(b *testing.B, name string, text []byte) string {
	b.Helper()
	file := filepath.Join(p.bin, name)
	if err := os.WriteFile(file, text, 0o600); err != nil {
		b.Fatal(err)
	}
	return file
}

func names(b *testing.B) []string {
	b.Helper()
	entries, err := fs.ReadDir(rules.Books, ".")
	if err != nil {
		b.Fatal(err)
	}
	var all []string
	for _, e := range entries {
		all = append(all, e.Name())
	}
	return all
}

// books copies the rules of all codebooks, without tests and tables, to a folder
// that the engine loads.
func (p *programs) books(b *testing.B) string {
	b.Helper()
	folder := filepath.Join(p.bin, "books")
	err := fs.WalkDir(rules.Books, ".", func(name string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() || filepath.Ext(name) != ".rego" || strings.HasSuffix(name, "_test.rego") {
			return err
		}
		text, err := fs.ReadFile(rules.Books, name)
		if err != nil {
			return err
		}
		to := filepath.Join(folder, name)
		if err := os.MkdirAll(filepath.Dir(to), 0o700); err != nil {
			return err
		}
		return os.WriteFile(to, text, 0o600)
	})
	if err != nil {
		b.Fatal(err)
	}
	return folder
}

// question gives the hut's structure as all books see it, and what is asked of it.
func (p *programs) question(b *testing.B) (input []byte, query string) {
	b.Helper()
	d := design.Load(design.Options{Files: os.DirFS(filepath.Join(p.top, "examples")), Path: hut, Parts: []design.PartsGlob{{Glob: "parts/*.parts.hcl", From: "hut"}}})
	if len(d.Problems) > 0 {
		b.Fatal(d.Problems.Error())
	}
	system := facts.New(d)
	var tree map[string]any
	var asked []string
	for _, name := range names(b) {
		files, _ := fs.Sub(rules.Books, name)
		book, problems := judge.Load(context.Background(), judge.Source{Name: name, Files: files, Embedded: true})
		if book == nil {
			b.Fatal(problems.Error())
		}
		in, err := judge.EngineInput(book, system)
		if err != nil {
			b.Fatal(err)
		}
		// The books see the same tree but for their own parameters.
		own := in.(map[string]any)
		if tree == nil {
			tree = own
		} else if params, ok := own["params"].(map[string]any); ok {
			all := tree["params"].(map[string]any)
			for name, p := range params {
				all[name] = p
			}
		}
		for _, r := range book.Rules() {
			asked = append(asked, fmt.Sprintf("%q: data.codebooks.%s.check", r.ID, r.ID))
		}
	}
	text, err := json.Marshal(tree)
	if err != nil {
		b.Fatal(err)
	}
	return text, "{" + strings.Join(asked, ", ") + "}"
}

func (p *programs) run(b *testing.B, dir, name string, arguments ...string) {
	for b.Loop() {
		command := exec.Command(filepath.Join(p.bin, name), arguments...)
		command.Dir = dir
		var said, wrong writer
		command.Stdout = &said
		command.Stderr = &wrong
		err := command.Run()
		var ended *exec.ExitError
		// Findings (1) are a result: another country's code has much to say of a hut.
		if err != nil && !(name == "stringline" && errors.As(err, &ended) && ended.ExitCode() == 1) {
			b.Fatalf("%v\n%s\n%.2000s", err, wrong, said)
		}
		if len(said) < 1000 {
			b.Fatalf("an answer of %d bytes: %s", len(said), said)
		}
	}
}

type writer []byte

func (w *writer) Write(p []byte) (int, error) { *w = append(*w, p...); return len(p), nil }
