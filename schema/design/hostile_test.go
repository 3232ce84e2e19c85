package design_test

import (
	"fmt"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"

	"stringline/schema/design"
	"stringline/schema/source"
)

const hostileFolder = "../../testdata/hostile"

// loadText loads a text that is a design by itself.
func loadText(name string, text []byte) *design.Design {
	return design.Load(design.Options{Files: fstest.MapFS{}, Path: name, Text: append([]byte{}, text...)})
}

// Texts that the guard lets through and the decoder must refuse. Each has a
// NAME.want beside it: one "line:column: part of the message" for each problem,
// in order. Attributes that are merely missing are left out of it, for the
// texts are no whole designs; nothing but # comments: all of it is accepted.
func TestHostileDesigns(t *testing.T) {
	files, err := filepath.Glob(filepath.Join(hostileFolder, "design", "*.design.hcl"))
	if err != nil || len(files) < 40 {
		t.Fatalf("found %d hostile designs (error: %v)", len(files), err)
	}
	for _, file := range files {
		name := strings.TrimSuffix(filepath.Base(file), ".design.hcl")
		t.Run(name, func(t *testing.T) {
			text, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			if guarded := source.Guard(source.NewFile(name, text)); len(guarded) > 0 {
				t.Fatalf("the guard refuses it, so it belongs one folder up: %v", guarded[0])
			}
			d := loadText(name, text)
			checkProblems(t, d)
			var got []string
			for _, p := range d.Problems {
				if p.Kind != "missing" || strings.HasPrefix(p.Message, "no design block") {
					got = append(got, fmt.Sprintf("%d:%d: %s", p.At.Start.Line, p.At.Start.Column, p.Message+near(p)))
				}
			}
			want := wanted(t, strings.TrimSuffix(file, ".design.hcl")+".want")
			for i := range max(len(got), len(want)) {
				switch {
				case i >= len(want):
					t.Errorf("also got: %s", got[i])
				case i >= len(got):
					t.Errorf("missing: %s", want[i])
				default:
					place, part, _ := strings.Cut(want[i], ": ")
					if !strings.HasPrefix(got[i], place+": ") || !strings.Contains(got[i], part) {
						t.Errorf("problem %d:\n got %s\nwant %s", i+1, got[i], want[i])
					}
				}
			}
		})
	}
}

func near(p source.Problem) string {
	if p.Near == "" {
		return ""
	}
	return " -> " + p.Near
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

// What the guard refuses reaches the user through Load unchanged: nothing is
// parsed, nothing is lost, and no further problem is made up.
func TestGuardedFilesReachTheUser(t *testing.T) {
	files, err := filepath.Glob(filepath.Join(hostileFolder, "*.design.hcl"))
	if err != nil || len(files) < 80 {
		t.Fatalf("found %d hostile files (error: %v)", len(files), err)
	}
	for _, file := range files {
		text, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		name := filepath.Base(file)
		d := loadText(name, text)
		checkProblems(t, d)
		guarded := source.Guard(source.NewFile(name, text))
		guarded.Sort()
		if len(guarded) == 0 {
			continue
		}
		if diff := cmp.Diff(places(guarded), places(d.Problems)); diff != "" {
			t.Errorf("%s: the guard's problems and Load's (-guard +load):\n%s", name, diff)
		}
	}
}

func places(problems source.Problems) []string {
	var list []string
	for _, p := range problems {
		list = append(list, p.At.String()+": "+p.Message)
	}
	return list
}

// checkProblems holds what Load promises of its problems on any input.
func checkProblems(t *testing.T, d *design.Design) {
	t.Helper()
	count := map[string]int{}
	files := map[string]*source.File{}
	for _, f := range d.Files {
		files[f.Name] = f
	}
	for i, p := range d.Problems {
		if p.Kind == "" || p.Message == "" {
			t.Errorf("problem without kind or message: %+v", p)
		}
		f := files[p.At.File]
		if f == nil || !p.At.Valid() || p.At.End.Byte < p.At.Start.Byte || p.At.Start != f.Position(p.At.Start.Byte) || p.At.End != f.Position(p.At.End.Byte) {
			t.Errorf("problem without a true place: %+v", p)
		}
		if strings.ContainsAny(p.Message, "\x00\x1b\n\r\u202e\u200b") {
			t.Errorf("message holds a character that acts on a terminal or hides: %q", p.Message)
		}
		if i > 0 && d.Problems[i-1].At.File == p.At.File && d.Problems[i-1].At.Start.Byte > p.At.Start.Byte {
			t.Errorf("problems are not sorted: %v before %v", d.Problems[i-1], p)
		}
		if count[p.At.File]++; count[p.At.File] > source.MaxProblems {
			t.Errorf("more than %d problems of one file", source.MaxProblems)
			return
		}
	}
}

// Large designs that the guard accepts, valid and wrong: the decoder's work
// and memory go with the text, and 100 problems are the most.
func TestLargeDesigns(t *testing.T) {
	head := "design \"large\" {}\n"
	repeat := func(piece string, n int) string { return head + strings.Repeat(piece, n) }
	number := func(format string, n int) string {
		var b strings.Builder
		b.WriteString(head)
		for i := 0; i < n && b.Len() < source.MaxBytes-200; i++ {
			fmt.Fprintf(&b, format, i)
		}
		return b.String()
	}
	tests := map[string]string{
		"unknown attributes":     head + "panel \"a\" {\n" + strings.Repeat("vcc = 1\n", 24_000) + "}\n",
		"distinct attributes":    head + "panel \"a\" {\n" + strings.TrimPrefix(number("v%d = 1\n", 20_000), head) + "}\n",
		"unknown blocks":         repeat("x {}\n", 19_000),
		"one block, many times":  repeat("bank \"a\" {}\n", 14_000),
		"panels":                 number("panel \"p%d\" {}\n", 12_000),
		"banks":                  number("bank \"b%d\" {}\n", 12_000),
		"near names, unresolved": number("load \"l%d\" {\nfrom = \"bank.house\"\n}\n", 5_000),
		"references, unresolved": head + strings.TrimPrefix(number("bank \"b%d\" {\nbattery = \"cell-abcdef\"\n}\n", 3_000), head) + number2("battery \"cel-%04d\" {}\n", 2_500),
		"supplies in one circle": head + circle(4_000),
		"supplies in a chain":    number("supply \"s%[1]d\" {\nfrom = \"supply.s%[1]d\"\n}\n", 5_000),
		"strings of an array":    head + "array \"a\" {\n" + strings.TrimPrefix(number("string \"s%d\" {}\n", 8_000), head) + "}\n",
		"panel counts":           head + "array \"a\" {\nstring \"s\" {\npanels = {" + strings.TrimPrefix(number("p%d = 1,", 20_000), head) + "}\n}\n}\n",
		"same panel counts":      head + "array \"a\" {\nstring \"s\" {\npanels = {" + strings.Repeat("p = 1,", 20_000) + "}\n}\n}\n",
		"list of numbers":        head + "load \"a\" {\nmonths = [" + strings.Repeat("1,", 45_000) + "]\n}\n",
		"list of wrong texts":    head + "controller \"a\" {\nbank_voltages = [" + strings.Repeat("\"x\",", 24_000) + "]\n}\n",
		"waivers":                number("waiver \"practice.r%d\" {}\n", 9_000),
		"parts that are absent":  "design \"large\" {\nparts = [" + strings.Repeat("\"x.parts.hcl\",", 12_000) + "]\n}\n",
		"one long line":          strings.ReplaceAll(strings.TrimPrefix(repeat("y ", 40_000), head), "\n", " "),
		"syntax errors":          repeat("a a\n", 30_000),
		"one long text":          head + "site {\nplace = \"" + strings.Repeat("é", 120_000) + "\"\n}\n",
		"one long label":         head + "bank \"" + strings.Repeat("a", 200_000) + "\" {}\n",
		"one long name":          head + "bank \"a\" {\n" + strings.Repeat("a", 200_000) + " = 1\n}\n",
		"one long number":        head + "panel \"a\" {\nvoc = \"" + strings.Repeat("9", 200_000) + " V\"\n}\n",
		"one long fraction":      head + "panel \"a\" {\nvoc = \"0." + strings.Repeat("9", 200_000) + " V\"\n}\n",
		"one long unit":          head + "panel \"a\" {\nvoc = \"5 " + strings.Repeat("V", 200_000) + "\"\n}\n",
	}
	for name, text := range tests {
		t.Run(name, func(t *testing.T) {
			if guarded := source.Guard(source.NewFile("large", []byte(text))); len(guarded) > 0 {
				t.Fatalf("the guard refuses it: %v", guarded[0])
			}
			var before, after runtime.MemStats
			runtime.ReadMemStats(&before)
			d := loadText("large", []byte(text))
			runtime.ReadMemStats(&after)
			if used := (after.TotalAlloc - before.TotalAlloc) >> 20; used > 300 {
				t.Errorf("allocated %d MB, want at most 300", used)
			}
			checkProblems(t, d)
			if len(d.Problems) == 0 && name != "panels" {
				t.Error("no problem was found")
			}
			for _, p := range d.Problems {
				// "Expected one of" may list every name that is known; the text
				// that was found must be shortened.
				if len(p.Found) > 2000 || len(p.Message) > 4000 || len(p.Near) > 200 {
					t.Fatalf("a problem repeats the text at length: message of %d bytes, found of %d", len(p.Message), len(p.Found))
				}
			}
		})
	}
}

// circle is a ring of supplies, each fed by the next.
func circle(n int) string {
	var b strings.Builder
	for i := range n {
		fmt.Fprintf(&b, "supply \"s%d\" {\nfrom = \"supply.s%d\"\n}\n", i, (i+1)%n)
	}
	return b.String()
}

func number2(format string, n int) string {
	var b strings.Builder
	for i := range n {
		fmt.Fprintf(&b, format, i)
	}
	return b.String()
}
