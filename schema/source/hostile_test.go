package source_test

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"stringline/schema/source"
)

const hostileFolder = "../../testdata/hostile"

// Every hostile file has a NAME.want beside it: one "line:column: part of the
// message" for each problem, in order, or nothing but # comments where the
// guard must let the file through.
func TestHostileFiles(t *testing.T) {
	files, err := filepath.Glob(filepath.Join(hostileFolder, "*.design.hcl"))
	if err != nil || len(files) < 80 {
		t.Fatalf("found %d hostile files (error: %v)", len(files), err)
	}
	for _, file := range files {
		name := strings.TrimSuffix(filepath.Base(file), ".design.hcl")
		t.Run(name, func(t *testing.T) {
			text, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			want := wanted(t, strings.TrimSuffix(file, ".design.hcl")+".want")
			if passes := strings.HasSuffix(name, "-passes") || strings.HasSuffix(name, "-pass"); passes && len(want) > 0 {
				t.Fatal("the name says that the file passes, the .want file lists problems")
			}
			f := source.NewFile("f", text)
			got := source.Guard(f)
			for i, p := range got {
				line := fmt.Sprintf("%d:%d: %s", p.At.Start.Line, p.At.Start.Column, p.Message)
				if i >= len(want) {
					t.Errorf("also got: %s", line)
					continue
				}
				place, part, _ := strings.Cut(want[i], ": ")
				if !strings.HasPrefix(line, place+": ") || !strings.Contains(line, part) {
					t.Errorf("problem %d:\n got %s\nwant %s", i+1, line, want[i])
				}
				checkWellFormed(t, f, p)
			}
			if len(want) > len(got) {
				t.Errorf("missing:\n%s", strings.Join(want[len(got):], "\n"))
			}
		})
	}
}

func wanted(t *testing.T, file string) []string {
	t.Helper()
	text, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	var lines []string
	for line := range strings.Lines(string(text)) {
		if line = strings.TrimRight(line, "\r\n"); line != "" && !strings.HasPrefix(line, "#") {
			lines = append(lines, line)
		}
	}
	return lines
}

// checkWellFormed holds what every problem of the guard promises.
func checkWellFormed(t *testing.T, f *source.File, p source.Problem) {
	t.Helper()
	if p.Kind == "" || p.Message == "" || p.Expected == "" || p.Found == "" {
		t.Errorf("problem lacks its kind, message, expected or found: %+v", p)
	}
	if !p.At.Valid() || p.At.File != f.Name || p.At.Start != f.Position(p.At.Start.Byte) || p.At.End.Byte < p.At.Start.Byte {
		t.Errorf("problem has no true place: %+v", p)
	}
	// Messages go to terminals and logs: nothing in them may act or hide.
	for _, r := range p.Message + p.Found + p.Expected {
		if r < 0x20 || r == 0x7F || r == 0x202E || r == 0x200B {
			t.Errorf("message holds U+%04X: %q", r, p.Message)
		}
	}
}

// The large sample of the language's description, and a workshop file, are the
// main thing that must get through.
func TestSamplesPass(t *testing.T) {
	for _, name := range []string{"sample.design.hcl", "workshop.hcl"} {
		text, err := os.ReadFile(filepath.Join("testdata", name))
		if err != nil {
			t.Fatal(err)
		}
		if got := source.Guard(source.NewFile(name, text)); len(got) > 0 {
			t.Errorf("the guard refuses %s:\n%v", name, got)
		}
		crlf := strings.ReplaceAll(string(text), "\n", "\r\n")
		if got := source.Guard(source.NewFile(name, []byte(crlf))); len(got) > 0 {
			t.Errorf("the guard refuses %s with CRLF:\n%v", name, got)
		}
	}
}
