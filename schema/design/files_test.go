package design_test

import (
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"

	"stringline/schema/design"
	"stringline/schema/source"
)

func tree(files map[string]string) fstest.MapFS {
	t := fstest.MapFS{}
	for name, text := range files {
		t[name] = &fstest.MapFile{Data: []byte(text)}
	}
	return t
}

// Columns count code points, whatever stands before the problem and however
// its lines end. é is e and a combining accent: two code points, and one
// grapheme cluster, which the parser underneath counts.
func TestColumns(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"degree and ohm", "design \"t\" {}\npanel \"a\" {\n  noct = \"45 °C\" /* °Ω² */ # x\n  voc = \"Ω\"\n}\n",
			`4:9: voc: expected a number and a unit, such as "37.4 V", found "Ω"`},
		{"on the same line", "design \"t\" {}\npanel \"a\" { /* 45 °C, 3 Ω */ vco = \"1 V\" }\n", `2:30: unknown attribute "vco" of panel (did you mean "voc"?)`},
		{"combining accent", "design \"t\" {}\npanel \"a\" { /* e\u0301e\u0301 */ vco = \"1 V\" }\n", `2:24: unknown attribute "vco" of panel (did you mean "voc"?)`},
		{"flag of two code points", "design \"t\" {}\npanel \"a\" { /* \U0001F1F3\U0001F1F4 */ vco = \"1 V\" }\n", `2:22: unknown attribute "vco" of panel (did you mean "voc"?)`},
		{"CRLF", "design \"t\" {}\r\npanel \"a\" {\r\n  voc = \"37 A\"\r\n}\r\n", `3:9: voc: expected a voltage (V), found a current, "37 A"`},
		{"byte order mark", "\uFEFFdesign \"t\" { revison = \"C\" }\n", `1:14: unknown attribute "revison" of design (did you mean "revision"?)`},
		{"no final newline", "design \"t\" {}\nsite { coldest = 5 }",
			`2:18: coldest: expected a temperature (degC), found the bare number 5, which has no unit; write it with its unit and in quotes, such as "5 degC"`},
	} {
		t.Run(c.name, func(t *testing.T) {
			if diff := cmp.Diff([]string{c.want}, shown(load(t, c.text).Problems)); diff != "" {
				t.Errorf("problems (-want +got):\n%s", diff)
			}
		})
	}
}

func TestParts(t *testing.T) {
	panel := func(name string) string { return fmt.Sprintf("panel %q {}\n", name) }
	files := tree(map[string]string{
		"parts/one.parts.hcl":         panel("a"),
		"parts/two.parts.hcl":         panel("b") + "battery \"a\" {}\n",
		"parts/again.hcl":             panel("a"),
		"twice/one.parts.hcl":         panel("a"),
		"wrong/a.parts.hcl":           "panel \"c\" { vco = \"1 V\" }\nbank \"x\" {}\n",
		"broken/a.parts.hcl":          "panel \"d\" {\n",
		"folder/x.parts.hcl/file.txt": "",
		"od[d]*/here.parts.hcl":       panel("e"),
	})
	for _, c := range []struct {
		name, path, parts string
		workshop          []design.PartsGlob
		panels            string
		want              []string
	}{
		{name: "glob from a folder", path: "huts/x.design.hcl", parts: `["../parts/*.parts.hcl"]`, panels: "a b"},
		{name: "one file", path: "x.design.hcl", parts: `["parts/one.parts.hcl"]`, panels: "a"},
		{name: "the same file by two globs", path: "x.design.hcl", parts: `["parts/one.parts.hcl", "parts/o*.parts.hcl"]`, panels: "a"},
		{name: "by the workshop", path: "huts/x.design.hcl", parts: `[]`, workshop: []design.PartsGlob{{Glob: "parts/*.parts.hcl", From: "."}}, panels: "a b"},
		{name: "the workshop's and its own", path: "huts/x.design.hcl", parts: `["../parts/one.parts.hcl"]`, workshop: []design.PartsGlob{{Glob: "parts/*.parts.hcl", From: "."}}, panels: "a b"},
		{name: "a folder whose name looks like a pattern", path: "od[d]*/x.design.hcl", parts: `["*.parts.hcl"]`, panels: "e"},
		{name: "nothing matches", path: "x.design.hcl", parts: `["part/*.parts.hcl"]`, want: []string{`x.design.hcl:1:23: reading parts "part/*.parts.hcl": no file matches`}},
		{name: "no such file", path: "x.design.hcl", parts: `["none.parts.hcl"]`, want: []string{`x.design.hcl:1:23: reading parts "none.parts.hcl": no such file`}},
		{name: "a folder", path: "x.design.hcl", parts: `["folder/x.parts.hcl"]`, want: []string{`x.design.hcl:1:23: reading parts "folder/x.parts.hcl": it is a folder, not a file`}},
		{name: "another name", path: "x.design.hcl", parts: `["parts/again.hcl"]`, want: []string{`x.design.hcl:1:23: reading parts "parts/again.hcl": the name of a parts file ends in .parts.hcl`}},
		{name: "above the tree", path: "x.design.hcl", parts: `["../parts/*.parts.hcl"]`, want: []string{`x.design.hcl:1:23: reading parts "../parts/*.parts.hcl": the path leaves the folder of the workshop`}},
		{name: "absolute", path: "x.design.hcl", parts: `["/parts/*.parts.hcl"]`,
			want: []string{`x.design.hcl:1:23: reading parts "/parts/*.parts.hcl": the path is absolute; it must be relative to the file that names it`}},
		{name: "backslashes", path: "x.design.hcl", parts: `["parts\\*.parts.hcl"]`, want: []string{`x.design.hcl:1:23: reading parts "parts\\*.parts.hcl": paths are written with / between folders`}},
		{name: "double star", path: "x.design.hcl", parts: `["**/*.parts.hcl"]`, want: []string{`x.design.hcl:1:23: reading parts "**/*.parts.hcl": ** is not understood; * stands for any name in one folder`}},
		{name: "bad pattern", path: "x.design.hcl", parts: `["parts/[.parts.hcl"]`, want: []string{`x.design.hcl:1:23: reading parts "parts/[.parts.hcl": the pattern is not well formed: syntax error in pattern`}},
		{name: "one name in two files", path: "x.design.hcl", parts: `["parts/one.parts.hcl", "twice/*.parts.hcl"]`, panels: "a",
			want: []string{`twice/one.parts.hcl:1:1: panel "a" is declared twice, first at parts/one.parts.hcl:1:1`}},
		{name: "problems of a parts file", path: "x.design.hcl", parts: `["wrong/*.parts.hcl"]`, panels: "c", want: []string{
			`wrong/a.parts.hcl:1:13: unknown attribute "vco" of panel (did you mean "voc"?)`,
			`wrong/a.parts.hcl:2:1: a bank block does not stand in a parts file; it stands in the top level of a design`,
		}},
	} {
		t.Run(c.name, func(t *testing.T) {
			for _, cache := range []*design.PartsCache{nil, new(design.PartsCache)} {
				text := "design \"t\" { parts = " + c.parts + " }\n" + `charger "m" {
  controller = "k"
  bank       = "h"
}
controller "k" {}
bank "h" {
  battery  = "x"
  series   = 1
  parallel = 1
}
battery "x" {}
`
				if c.panels != "" {
					text += "array \"s\" {\n charger = \"m\"\n string \"s\" { panels = {"
					for _, name := range strings.Fields(c.panels) {
						text += fmt.Sprintf(" %q = 1,", name)
					}
					text += "} }\n}\n"
				}
				d := design.Load(design.Options{Files: files, Path: c.path, Text: []byte(text), Parts: c.workshop, Cache: cache})
				if diff := cmp.Diff(c.want, shown(d.Problems)); diff != "" {
					t.Errorf("problems (-want +got):\n%s", diff)
				}
			}
		})
	}
}

// The tree is confined: nothing outside its root is read, by whatever path or
// link, and nothing but regular files.
func TestConfinement(t *testing.T) {
	outside, inside := t.TempDir(), t.TempDir()
	write := func(dir, name, text string) {
		t.Helper()
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	write(outside, "secret.parts.hcl", "panel \"secret\" {}\n")
	write(inside, "plain.parts.hcl", "panel \"plain\" {}\n")
	link := func(from, to string) {
		t.Helper()
		if err := os.Symlink(from, filepath.Join(inside, to)); err != nil {
			t.Skipf("no symbolic links here: %v", err)
		}
	}
	link(filepath.Join(outside, "secret.parts.hcl"), "file.parts.hcl")
	link(outside, "folder")
	link("loop-b.parts.hcl", "loop-a.parts.hcl")
	link("loop-a.parts.hcl", "loop-b.parts.hcl")
	link("plain.parts.hcl", "within.parts.hcl")
	link("nowhere.parts.hcl", "dangling.parts.hcl")
	root, err := os.OpenRoot(inside)
	if err != nil {
		t.Fatal(err)
	}
	defer root.Close()
	for _, c := range []struct{ glob, want string }{
		{"plain.parts.hcl", ""},
		{"within.parts.hcl", ""},
		{"file.parts.hcl", "a symbolic link leads out of the folder of the workshop"},
		{"folder/secret.parts.hcl", "a symbolic link leads out of the folder of the workshop"},
		{"folder/*.parts.hcl", "no file matches"},
		{"loop-a.parts.hcl", "its symbolic links go round in a circle"},
		{"dangling.parts.hcl", "no such file"},
		{"../" + filepath.Base(outside) + "/secret.parts.hcl", "the path leaves the folder of the workshop"},
	} {
		text := fmt.Sprintf("design \"t\" { parts = [%q] }\n", c.glob)
		d := design.Load(design.Options{Files: root.FS(), Path: "x.design.hcl", Text: []byte(text)})
		if c.want == "" {
			if len(d.Problems) > 0 || len(d.Files) != 2 {
				t.Errorf("%s: %v, %d files", c.glob, d.Problems, len(d.Files))
			}
			continue
		}
		if len(d.Problems) != 1 || !strings.HasSuffix(d.Problems[0].Message, ": "+c.want) {
			t.Errorf("%s: got %v, want %q", c.glob, d.Problems, c.want)
		}
		if len(d.Files) != 1 {
			t.Errorf("%s: %d files were read", c.glob, len(d.Files))
		}
		for _, p := range d.Problems {
			if strings.Contains(p.Error(), inside) || strings.Contains(p.Error(), outside) {
				t.Errorf("a problem tells a path of this machine: %v", p)
			}
		}
	}
	d := design.Load(design.Options{Files: root.FS(), Path: "x.design.hcl", Text: []byte("design \"t\" {}\nsite { weather = \"folder/secret.parts.hcl\" }\n")})
	if len(d.Problems) != 1 || d.Problems[0].Kind != "file" {
		t.Errorf("weather outside the tree: %v", d.Problems)
	}
}

func TestDesignThatCannotBeRead(t *testing.T) {
	files := tree(map[string]string{"x.design.hcl/file": ""})
	for _, c := range []struct {
		files fs.FS
		path  string
		want  string
	}{
		{files, "none.design.hcl", "reading the design: no such file"},
		{files, "x.design.hcl", "reading the design: it is a folder, not a file"},
		{files, "../x.design.hcl", "reading the design: the path leaves the folder of the workshop"},
		{nil, "x.design.hcl", "reading the design: no files can be read here"},
	} {
		d := design.Load(design.Options{Files: c.files, Path: c.path})
		if len(d.Problems) != 1 || d.Problems[0].Message != c.want || d.Problems[0].At.File != c.path {
			t.Errorf("%s: %v, want %q", c.path, d.Problems, c.want)
		}
	}
}

func TestShow(t *testing.T) {
	files := archive(t, "sample.txtar")
	delete(files, "huts/larch-col.epw")
	d := design.Load(design.Options{Files: files, Path: "huts/larch.design.hcl", Show: func(p string) string { return "work/" + p }})
	if d.File != "work/huts/larch.design.hcl" || d.Problems[0].At.File != d.File {
		t.Errorf("shown as %q and %q", d.File, d.Problems[0].At.File)
	}
	if at := d.Find("panel", "slate-410").Header.File; at != "work/parts/panels.parts.hcl" {
		t.Errorf("a part stands in %q", at)
	}
}

// The digest follows every byte of every file that was read, and nothing else.
func TestDigest(t *testing.T) {
	digest := func(change func(fstest.MapFS)) string {
		files := archive(t, "sample.txtar")
		change(files)
		return design.Load(design.Options{Files: files, Path: "huts/larch.design.hcl"}).Digest
	}
	edit := func(name string) func(fstest.MapFS) {
		return func(files fstest.MapFS) { files[name] = &fstest.MapFile{Data: append(files[name].Data, '\n')} }
	}
	same := digest(func(fstest.MapFS) {})
	if len(same) != len("sha256:")+64 {
		t.Errorf("digest %q", same)
	}
	if again := digest(func(fstest.MapFS) {}); again != same {
		t.Errorf("two loads, two digests: %s %s", same, again)
	}
	for _, name := range []string{"huts/larch.design.hcl", "parts/panels.parts.hcl", "parts/gear.parts.hcl"} {
		if digest(edit(name)) == same {
			t.Errorf("a change of %s does not change the digest", name)
		}
	}
	if digest(func(files fstest.MapFS) { files["parts/other.txt"] = &fstest.MapFile{} }) != same {
		t.Error("a file that is not read changes the digest")
	}
}

// One cache serves many designs at the same time, and none of them changes
// what the others see.
func TestCacheIsShared(t *testing.T) {
	files := archive(t, "sample.txtar")
	cache := new(design.PartsCache)
	bad := strings.Replace(string(files["huts/larch.design.hcl"].Data), `controller = "ridge-70"`, `controller = "ridge-7"`, 1)
	var wait sync.WaitGroup
	counts := make([]int, 16)
	parts := make([]*design.Block, 16)
	for i := range counts {
		wait.Go(func() {
			opts := design.Options{Files: files, Path: "huts/larch.design.hcl", Cache: cache}
			if i%2 == 1 {
				opts.Text = []byte(bad)
			}
			d := design.Load(opts)
			counts[i], parts[i] = len(d.Problems), d.Find("panel", "slate-410")
		})
	}
	wait.Wait()
	for i, n := range counts {
		if n != i%2 {
			t.Errorf("design %d has %d problems, want %d", i, n, i%2)
		}
		if parts[i] != parts[0] {
			t.Error("the parts file was decoded twice")
		}
	}
}

func TestDeclared(t *testing.T) {
	asks := map[string][]design.Attribute{
		"bank": {{Name: "ventilated", Form: design.YesNo}, {Name: "volume", Form: design.Quantity, Unit: "m"}, {Name: "kind", Form: design.Word, Words: []string{"room", "box"}}},
		"fuse": {{Name: "sealed", Form: design.YesNo}},
	}
	text := whole + `load "l" {
  from = "bank.house"
  fuse {
    declared "county" { sealed = true }
  }
}
bank "two" {
  battery  = "cell"
  series   = 1
  parallel = 1
  declared "county" {
    ventilated = true
    volum      = "2 m"
    kind       = "rom"
  }
  declared "parish" { x = 1 }
  declared "county" {}
  main {
    declared "county" {}
  }
}
`
	d := design.Load(design.Options{Path: "a.design.hcl", Text: []byte(text), Declares: func(book string) (map[string][]design.Attribute, bool) { return asks, book == "county" }})
	first := strings.Count(whole, "\n")
	var got []string
	for _, p := range d.Problems {
		p.At.Start.Line -= first
		got = append(got, shown(source.Problems{p})...)
	}
	want := []string{
		`13:5: codebook "county" does not ask for "volum" of a bank (did you mean "volume"?)`,
		`14:18: kind: expected one of "room", "box", found "rom" (did you mean "room"?)`,
		`16:3: no codebook "parish" is in force here, so nothing asks for these answers`,
		`17:3: a second declared "county" in one block`,
		`19:5: a declared block does not stand in a main block; it stands in the block that it is about`,
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("problems (-want +got):\n%s", diff)
	}
	bank := d.Find("bank", "two")
	if v := bank.Declared["county"]["ventilated"]; v == nil || v.Bad || !v.Yes {
		t.Errorf("bank.two.declared.county.ventilated = %+v", v)
	}
	if v := bank.Declared["county"]["kind"]; v == nil || !v.Bad {
		t.Errorf("a misread answer is not bad: %+v", v)
	}
	if v := d.Find("load", "l").Child("fuse").Declared["county"]["sealed"]; v == nil || !v.Yes {
		t.Errorf("a fuse's answer: %+v", v)
	}
}

func TestAtMostAHundredProblems(t *testing.T) {
	for _, c := range []struct{ wrong, want int }{{99, 99}, {100, 100}, {101, 100}, {5000, 100}} {
		d := load(t, "design \"t\" {}\n"+strings.Repeat("x {}\n", c.wrong))
		if len(d.Problems) != c.want {
			t.Errorf("%d wrong lines give %d problems, want %d", c.wrong, len(d.Problems), c.want)
		}
		last := d.Problems[len(d.Problems)-1]
		more := fmt.Sprintf("%d more problems in this file are not listed", c.wrong-99)
		if told := last.Message == more; told != (c.wrong > 100) {
			t.Errorf("%d wrong lines: the last problem is %q", c.wrong, last.Message)
		}
	}
}

// What the parser could not read is not said to be missing.
func TestSyntaxErrorsDoNotBreedOthers(t *testing.T) {
	d := load(t, whole+"charger \"b\" {\n  controller = \"c2\"\n  bank = \n}\nload \"l\" { from = \"bank.none\" }\npanel \"q\" { vco = \"1 V\" }\n")
	for _, p := range d.Problems {
		if p.Kind == "missing" || p.Kind == "unknown_name" {
			t.Errorf("after a syntax error: %v", p)
		}
	}
	if len(d.Problems) == 0 || d.Problems[0].Kind != "syntax" || d.Problems[0].At.Start.Line != strings.Count(whole, "\n")+3 {
		t.Errorf("problems: %v", d.Problems)
	}
}
