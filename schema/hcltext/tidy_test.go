package hcltext_test

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/hashicorp/hcl/v2/hclwrite"

	"stringline/schema/hcltext"
	"stringline/schema/source"
)

func tidy(text string) (string, source.Problems) {
	got, problems := hcltext.Tidy(source.NewFile("f", []byte(text)))
	return string(got), problems
}

func TestTidy(t *testing.T) {
	for _, c := range []struct{ name, text, want string }{
		{"an empty file", "", ""},
		{"blank lines alone", "\n \n\t\n", ""},
		{"a comment without a line end", "# a", "# a\n"},
		{"columns", "site {\n  latitude = \"1 deg\" # a\n\televation=\"2 m\"  # b\n}", "site {\n  latitude  = \"1 deg\" # a\n  elevation = \"2 m\"   # b\n}\n"},
		{"what stands in quotes stays", "a=\"6mm²   x \"\nbc = \"-27°C\"\n", "a  = \"6mm²   x \"\nbc = \"-27°C\"\n"},
		{"blank lines run together", "a = 1\n\n\n\nb = 2\n\n\n", "a = 1\n\nb = 2\n"},
		{"none behind an opening bracket or before a closing one", "x {\n\n  a = 1\n\n}\ny = [\n\n  1,\n\n]\n", "x {\n  a = 1\n}\n\ny = [\n  1,\n]\n"},
		{"a blank line between blocks", "a {\n  b = 1\n}\nc {\n  d = 1\n}\n", "a {\n  b = 1\n}\n\nc {\n  d = 1\n}\n"},
		{"comments go with the block below", "a = 1\n# of b\n# too\nb {\n  c = 1\n}\n", "a = 1\n\n# of b\n# too\nb {\n  c = 1\n}\n"},
		{"a comment behind a block stays behind it", "a {\n  b = 1\n}\n# of a\n\nb {\n  c = 1\n}\n", "a {\n  b = 1\n}\n# of a\n\nb {\n  c = 1\n}\n"},
		{"blocks of one line stand together", "codebook \"iec\" {}\ncodebook \"marine\" {}\n", "codebook \"iec\" {}\ncodebook \"marine\" {}\n"},
		{"inside a block nothing is put between", "a {\n  b = 1\n  c {\n    d = 1\n  }\n  e {\n    d = 1\n  }\n}\n", "a {\n  b = 1\n  c {\n    d = 1\n  }\n  e {\n    d = 1\n  }\n}\n"},
		{"blanks at the end of a line and of a comment", "a = 1 \t\n# b \t\n/* c  \n\n   d */\n", "a = 1\n# b\n/* c\n\n   d */\n"},
		{"CRLF stays", "a=1\r\nbb=2\r\n", "a  = 1\r\nbb = 2\r\n"},
		{"mixed line ends become LF", "a = 1\r\nb = 2\n", "a = 1\nb = 2\n"},
		{"the byte order mark goes", "\uFEFFa = 1\n", "a = 1\n"},
		{"objects", "panels={ \"slate-410\"=2,dusk=1 }\nx = [ 1,-2 ]\n", "panels = { \"slate-410\" = 2, dusk = 1 }\nx      = [1, -2]\n"},
	} {
		got, problems := tidy(c.text)
		if len(problems) > 0 {
			t.Errorf("%s: %v", c.name, problems)
			continue
		}
		if diff := cmp.Diff(c.want, got); diff != "" {
			t.Errorf("%s (-want +got):\n%s", c.name, diff)
		}
		checkTidy(t, c.text, got)
	}
}

// checkTidy holds what is promised of a result: the general formatter of the
// syntax leaves it as it is, so does Tidy, and it means what the text means.
// Comments are counted apart, for the data do not hold them.
func checkTidy(t *testing.T, text, got string) {
	t.Helper()
	if formatted := hclwrite.Format([]byte(got)); string(formatted) != got {
		t.Errorf("the formatter changes the result of %q:\n%s", text, cmp.Diff(got, string(formatted)))
	}
	again, problems := tidy(got)
	if len(problems) > 0 || again != got {
		t.Errorf("tidied twice %q is %q, then %q (%v)", text, got, again, problems)
	}
	before, _, _ := parse(text)
	after, _, _ := parse(got)
	if diff := cmp.Diff(dump(*before), dump(*after)); diff != "" {
		t.Errorf("the meaning of %q changes (-before +after):\n%s", text, diff)
	}
	if was, is := strings.Join(strings.Fields(strings.TrimPrefix(text, "\uFEFF")), ""), strings.Join(strings.Fields(got), ""); was != is {
		t.Errorf("more than blanks changes: %q becomes %q", was, is)
	}
}

// dump writes a body as data, without places.
func dump(b hcltext.Body) []string {
	var lines []string
	for _, a := range b.Attributes {
		lines = append(lines, a.Name+"="+show(a.Value))
	}
	for _, block := range b.Blocks {
		head := block.Keyword
		for _, l := range block.Labels {
			head += " " + l.Text
		}
		lines = append(lines, head)
		for _, inner := range dump(block.Body) {
			lines = append(lines, "\t"+inner)
		}
	}
	return lines
}

// What does not parse is left alone, with the place.
func TestTidyRefuses(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"a = \n", "f:1:"},
		{"a = 1\nx {\n", "f:2:"},
		{"a = 1\na = 2\n", "f:2:1: a is given twice"},
		{"a = b\n", "f:1:5: a bare word"},
		{"<<<<<<< ours\n", "f:1:1: unresolved merge conflict"},
		{"a = \"x\r\n", "f:1:5: this string is never closed"},
		{"a = 1\x00\n", "f:1:"},
	} {
		got, problems := tidy(c.text)
		if got != "" || len(problems) == 0 || !strings.HasPrefix(problems[0].Error(), c.want) {
			t.Errorf("%q: %q, %v; want %s", c.text, got, problems, c.want)
		}
	}
	// One very long name beside many lines would take gigabytes in columns.
	text := strings.Repeat("a", 100_000) + " = 1\n"
	for i := range 10_000 {
		text += "b" + strings.Repeat("b", i%3) + strings.Repeat("c", i%7) + " { }\n"
	}
	if got, problems := tidy(text); got != "" || len(problems) != 1 || !strings.Contains(problems[0].Message, "too long") {
		t.Errorf("a bomb of columns gave %d bytes, %v", len(got), problems)
	}
	// Laid out it would be longer than a file may be.
	text = strings.Repeat("a", 1000) + " = 1\n"
	for i := range 500 {
		text += strings.Repeat("b", 1+i/26) + string(rune('c'+i%23)) + strings.Repeat("x", i%7) + strings.Repeat("y", i%11) + strings.Repeat("z", i%13) + "=1\n"
	}
	if got, problems := tidy(text); got != "" || len(problems) != 1 || !strings.Contains(problems[0].Message, "256 KiB") {
		t.Errorf("a file that grows too long gave %d bytes, %v", len(got), problems)
	}
}

// everyText gives all files of the language in the tree: examples, codebooks with
// their designs, hostile files.
func everyText(t testing.TB) map[string][]byte {
	t.Helper()
	texts := map[string][]byte{}
	for _, top := range []string{"../../examples", "../../rules", "../../testdata/hostile", "../../cmd/stringline/codebook_template", "../source/testdata"} {
		err := filepath.WalkDir(top, func(name string, entry os.DirEntry, err error) error {
			if err != nil || entry.IsDir() || !strings.HasSuffix(name, ".hcl") {
				return err
			}
			text, err := os.ReadFile(name)
			texts[name] = text
			return err
		})
		if err != nil {
			t.Fatal(err)
		}
	}
	if len(texts) < 200 {
		t.Fatalf("only %d files were found", len(texts))
	}
	return texts
}

// Every file that comes with the program keeps its meaning, and the examples and
// codebooks are tidy already: what the program ships, it lays out as it preaches.
func TestTidyEverything(t *testing.T) {
	tidied := 0
	for name, text := range everyText(t) {
		got, problems := hcltext.Tidy(source.NewFile(name, text))
		if len(problems) > 0 {
			if !strings.Contains(name, "hostile") && !strings.Contains(name, "testdata") {
				t.Errorf("%v", problems)
			}
			continue
		}
		tidied++
		checkTidy(t, string(text), string(got))
		if !strings.Contains(name, "testdata") && !bytes.Equal(got, text) {
			t.Errorf("%s is not tidy:\n%s", name, cmp.Diff(string(text), string(got)))
		}
	}
	if tidied < 200 {
		t.Errorf("only %d files could be tidied", tidied)
	}
}

func FuzzTidy(f *testing.F) {
	for _, text := range everyText(f) {
		if len(text) < 4000 {
			f.Add(string(text))
		}
	}
	f.Fuzz(func(t *testing.T, text string) {
		got, problems := tidy(text)
		if len(problems) > 0 {
			if got != "" {
				t.Errorf("%q: a result beside problems", text)
			}
			return
		}
		checkTidy(t, text, got)
	})
}

func BenchmarkTidy(b *testing.B) {
	text, err := os.ReadFile("../../examples/hut/hut.design.hcl")
	if err != nil {
		b.Fatal(err)
	}
	b.SetBytes(int64(len(text)))
	for b.Loop() {
		if _, problems := hcltext.Tidy(source.NewFile("f", text)); len(problems) > 0 {
			b.Fatal(problems)
		}
	}
}
