package workshop_test

import (
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"

	"stringline/schema/hcltext"
	"stringline/schema/source"
	"stringline/schema/workshop"
)

func tree(text string) fstest.MapFS {
	file := func(s string) *fstest.MapFile { return &fstest.MapFile{Data: []byte(s)} }
	return fstest.MapFS{
		"w/workshop.hcl":                 file(text),
		"w/codebooks/house/codebook.hcl": file(""),
		"w/keys/house.pem":               file("key"),
		"books/far/codebook.hcl":         file(""),
	}
}

// sample is the workshop file of the language's specification.
const sample = `parts = ["parts/*.parts.hcl"]

codebook "us_2023" {}

codebook "house" {
  path = "codebooks/house"
  # pinned, where wanted
  params {
    voltage_drop_max = "2 %"
    strict           = true
    strings          = 3
  }
}

grade "practice.voltage_drop" { # this workshop takes that rule more seriously
  as = "fix"
}
`

func TestSampleOfTheSpecification(t *testing.T) {
	w := workshop.Load(tree(sample), "w/workshop.hcl", nil)
	if len(w.Problems) > 0 {
		t.Fatal(w.Problems)
	}
	if w.File != "w/workshop.hcl" || w.Folder != "w" {
		t.Errorf("file %q in folder %q", w.File, w.Folder)
	}
	if len(w.Parts) != 1 || w.Parts[0].Glob != "parts/*.parts.hcl" || w.Parts[0].From != "w" || w.Parts[0].At.String() != "w/workshop.hcl:1:10" {
		t.Errorf("parts: %+v", w.Parts)
	}
	if len(w.Books) != 2 || w.Books[0].Name != "us_2023" || w.Books[0].Path != "" || w.Books[1].Path != "w/codebooks/house" {
		t.Fatalf("books: %+v", w.Books)
	}
	texts := map[string]string{}
	for name, p := range w.Books[1].Parameters {
		texts[name] = p.Text + " at " + strings.TrimPrefix(p.At.String(), "w/workshop.hcl:")
	}
	want := map[string]string{"voltage_drop_max": "2 % at 9:24", "strict": "true at 10:24", "strings": "3 at 11:24"}
	if diff := cmp.Diff(want, texts); diff != "" {
		t.Errorf("parameters (-want +got):\n%s", diff)
	}
	if len(w.Grades) != 1 || w.Grades[0].Rule != "practice.voltage_drop" || w.Grades[0].As != "fix" || w.Grades[0].At.String() != "w/workshop.hcl:15:1" {
		t.Errorf("grades: %+v", w.Grades)
	}
}

func TestPinned(t *testing.T) {
	digest := "sha256:" + strings.Repeat("0a", 32)
	w := workshop.Load(tree(`codebook "house" {
  path   = "codebooks/house"
  digest = "`+digest+`"
  key    = "keys/house.pem"
}
codebook "far" {
  path = "../books/far"
}
`), "w/workshop.hcl", nil)
	if len(w.Problems) > 0 {
		t.Fatal(w.Problems)
	}
	if b := w.Books[0]; b.Digest != digest || b.Key != "w/keys/house.pem" {
		t.Errorf("digest %q, key %q", b.Digest, b.Key)
	}
	if w.Books[1].Path != "books/far" {
		t.Errorf("path %q", w.Books[1].Path)
	}
}

func TestProblems(t *testing.T) {
	for _, c := range []struct {
		name, text string
		want       []string
		books      int
	}{
		{"empty", "", nil, 0},
		{"unknown attribute", "part = [\"x\"]\n", []string{`1:1: unknown attribute "part" of workshop (did you mean "parts"?)`}, 0},
		{"unknown block", "codebok \"a\" {}\n", []string{`1:1: unknown block "codebok" in a workshop file (did you mean "codebook"?)`}, 0},
		{"a design's block", "panel \"a\" {}\n", []string{`1:1: a panel block stands in a design or a parts file, not in a workshop file`}, 0},
		{"codebook twice", "codebook \"a\" {}\ncodebook \"a\" {}\n", []string{`2:1: codebook "a" stands twice, first at w/workshop.hcl:1:1`}, 1},
		{"grade twice", "grade \"a.b\" { as = \"fix\" }\ngrade \"a.b\" { as = \"stop\" }\n", []string{`2:1: grade "a.b" stands twice, first at w/workshop.hcl:1:1`}, 0},
		{"label in capitals", "codebook \"House\" {}\n", []string{`1:10: the label of a codebook: expected the name of a codebook: small letters, digits and _, found "House" (did you mean "house"?)`}, 0},
		{"no label", "codebook {}\n", []string{`1:1: a codebook block has one label: the name of a codebook: small letters, digits and _`}, 0},
		{"no rule id", "grade \"practice\" { as = \"fix\" }\n", []string{`1:7: the label of a grade: expected a rule id, such as codebook.rule, found "practice"`}, 0},
		{"no grade", "grade \"a.b\" {}\n", []string{`1:1: as is missing: stop, fix or advise`}, 0},
		{"misspelt grade", "grade \"a.b\" { as = \"fixx\" }\n", []string{`1:20: as: expected one of "stop", "fix", "advise", found "fixx" (did you mean "fix"?)`}, 0},
		{"grade that silences", "grade \"a.b\" { as = \"off\" }\n", []string{`1:20: as: expected one of "stop", "fix", "advise", found "off"`}, 0},
		{"no such folder", "codebook \"a\" { path = \"none\" }\n", []string{`1:23: path: reading "none": no such file`}, 0},
		{"a file for a folder", "codebook \"a\" { path = \"keys/house.pem\" }\n", []string{`1:23: path: reading "keys/house.pem": it is neither a folder nor an archive named *.zip`}, 0},
		{"out of the tree", "codebook \"a\" { path = \"../../x\" }\n", []string{`1:23: path: reading "../../x": the path leaves the folder of the workshop`}, 0},
		{"absolute", "codebook \"a\" { path = \"/x\" }\n", []string{`1:23: path: reading "/x": the path is absolute; it must be relative to the file that names it`}, 0},
		{"bad answers", "codebook \"a\" { answers = [\"limits\"] }\n", []string{`1:27: answers: expected the id of a rule, such as limits.conductor_carries, found "limits"`}, 1},
		{"bad digest", "codebook \"a\" { digest = \"sha256:12\" }\n", []string{`1:25: digest: expected sha256: and 64 hexadecimal digits, found "sha256:12"`}, 0},
		{"no such key", "codebook \"a\" { key = \"keys/b.pem\" }\n", []string{`1:22: key: reading "keys/b.pem": no such file`}, 0},
		{"unknown attribute of a book", "codebook \"a\" { pth = \"x\" }\n", []string{`1:16: unknown attribute "pth" of codebook (did you mean "path"?)`}, 1},
		{"misspelt params", "codebook \"a\" {\n  param {}\n}\n", []string{`2:3: unknown block "param" in a codebook block (did you mean "params"?)`}, 1},
		{"params twice", "codebook \"a\" {\n  params {}\n  params {}\n}\n", []string{`3:3: a second params block in one codebook block`}, 1},
		{"parameter twice", "codebook \"a\" {\n  params {\n    x = 1\n    x = 2\n  }\n}\n", []string{`4:5: x is given twice in one block`}, 1},
		{"list for a parameter", "codebook \"a\" {\n  params { x = [1] }\n}\n",
			[]string{`2:16: x: expected a quantity or a word in quotes, a number, true or false, found a list`}, 1},
		{"not text", "parts = \"x\"\n", []string{`1:9: parts: expected a list of texts in [ ], found the text "x"`}, 0},
		{"° before it, CRLF", "# 45 °C\r\ncodebook \"a\" { /* ° */ pth = \"x\" }\r\n", []string{`2:24: unknown attribute "pth" of codebook (did you mean "path"?)`}, 1},
	} {
		t.Run(c.name, func(t *testing.T) {
			w := workshop.Load(tree(c.text), "w/workshop.hcl", nil)
			var got []string
			for _, p := range w.Problems {
				got = append(got, strings.TrimPrefix(p.Error(), "w/workshop.hcl:"))
			}
			if diff := cmp.Diff(c.want, got); diff != "" {
				t.Errorf("problems (-want +got):\n%s", diff)
			}
			if len(w.Books) != c.books {
				t.Errorf("%d books, want %d", len(w.Books), c.books)
			}
		})
	}
}

// A parameter whose literal could not be read stays, so that the codebook's
// default does not stand for it in silence.
func TestUnreadParameterStays(t *testing.T) {
	w := workshop.Load(tree("codebook \"a\" {\n  params { x = [1] }\n}\n"), "w/workshop.hcl", nil)
	p, ok := w.Books[0].Parameters["x"]
	if !ok || p.Literal.Kind != hcltext.Bad {
		t.Errorf("parameter x: %v, %+v", ok, p)
	}
}

func TestNotThere(t *testing.T) {
	w := workshop.Load(fstest.MapFS{}, "workshop.hcl", func(p string) string { return "../" + p })
	if len(w.Problems) != 1 || w.Problems[0].Message != "reading the workshop: no such file" || w.Problems[0].At.File != "../workshop.hcl" {
		t.Errorf("problems: %v", w.Problems)
	}
}

func TestLinksStayInside(t *testing.T) {
	outside, inside := t.TempDir(), t.TempDir()
	if err := os.Symlink(outside, filepath.Join(inside, "book")); err != nil {
		t.Skipf("no symbolic links here: %v", err)
	}
	if err := os.WriteFile(filepath.Join(inside, "workshop.hcl"), []byte("codebook \"a\" { path = \"book\" }\n"), 0o600); err != nil {
		t.Fatal(err)
	}
	root, err := os.OpenRoot(inside)
	if err != nil {
		t.Fatal(err)
	}
	defer root.Close()
	w := workshop.Load(root.FS(), "workshop.hcl", nil)
	want := `workshop.hcl:1:23: path: reading "book": a symbolic link leads out of the folder of the workshop`
	if len(w.Problems) != 1 || w.Problems[0].Error() != want {
		t.Errorf("problems %v, want %s", w.Problems, want)
	}
}

func TestAtMostAHundredProblems(t *testing.T) {
	w := workshop.Load(tree(strings.Repeat("x {}\n", 300)), "w/workshop.hcl", nil)
	if len(w.Problems) != source.MaxProblems {
		t.Errorf("%d problems", len(w.Problems))
	}
}
