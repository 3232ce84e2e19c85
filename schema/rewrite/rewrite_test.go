package rewrite_test

import (
	"bytes"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"stringline/schema/hcltext"
	"stringline/schema/rewrite"
	"stringline/schema/source"
)

const sample = `# head

# the cellar
bank "house" {
  battery = "fell-200" # bought in May
  # how many
  series   = 1
  parallel = 2

  each {
    fuse { rating = "125 A" }
  }
}

array "south" {
  # wired in March
  string "a" {
    panels = {
      "slate-410" = 2 # from the barn
    }
  }
}

reading "open" { # a fine day
  value = "72.1 V"
}
`

func block(t *testing.T, d *rewrite.Document, header string) *hcltext.Block {
	t.Helper()
	i := strings.Index(sample, header)
	if b := d.At(i); i >= 0 && b != nil {
		return b
	}
	t.Fatalf("no block begins with %s", header)
	return nil
}

func open(t *testing.T, text string) *rewrite.Document {
	t.Helper()
	d, problems := rewrite.Open("f", []byte(text))
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	return d
}

func TestEdits(t *testing.T) {
	if diff := cmp.Diff(sample, string(hcltext.Format([]byte(sample)))); diff != "" {
		t.Fatalf("the sample is not laid out (-is +laid out):\n%s", diff)
	}
	for name, c := range map[string]struct {
		edit     func(d *rewrite.Document) error
		from, to string // what changes of the sample, once
	}{
		"a value is replaced where it stands": {
			func(d *rewrite.Document) error { return d.Set(block(t, d, `bank "house"`), "series", "2") },
			"  series   = 1\n", "  series   = 2\n"},
		"the comment behind a value stays": {
			func(d *rewrite.Document) error { return d.Set(block(t, d, `bank "house"`), "battery", `"fell-100"`) },
			`"fell-200" # bought in May`, `"fell-100" # bought in May`},
		"a new attribute goes behind the last": {
			func(d *rewrite.Document) error { return d.Set(block(t, d, `bank "house"`), "matched", "true") },
			"  parallel = 2\n", "  parallel = 2\n  matched  = true\n"},
		"a block on one line is opened up": {
			func(d *rewrite.Document) error { return d.Set(block(t, d, `fuse {`), "distance", `"0.2 m"`) },
			`    fuse { rating = "125 A" }`, "    fuse {\n      rating   = \"125 A\"\n      distance = \"0.2 m\"\n    }"},
		"two new attributes go to one block": {
			func(d *rewrite.Document) error {
				return errors.Join(d.Set(block(t, d, `bank "house"`), "matched", "true"), d.Set(block(t, d, `bank "house"`), "coldest", `"5 degC"`))
			},
			"  parallel = 2\n", "  parallel = 2\n  matched  = true\n  coldest  = \"5 degC\"\n"},
		"two new attributes go to a block on one line": {
			func(d *rewrite.Document) error {
				return errors.Join(d.Set(block(t, d, `fuse {`), "distance", `"0.2 m"`), d.Set(block(t, d, `fuse {`), "rating", `"100 A"`), d.Set(block(t, d, `fuse {`), "dc_rated", `true`))
			},
			`    fuse { rating = "125 A" }`, "    fuse {\n      rating   = \"100 A\"\n      distance = \"0.2 m\"\n      dc_rated = true\n    }"},
		"a block inside one that has none": {
			func(d *rewrite.Document) error {
				fuse := block(t, d, `fuse {`)
				return errors.Join(d.SetIn(fuse, "declared", "iec", "marked", "true"), d.Set(fuse, "dc_rated", "true"), d.SetIn(fuse, "declared", "iec", "listed", "false"))
			},
			`    fuse { rating = "125 A" }`, "    fuse {\n      rating   = \"125 A\"\n      dc_rated = true\n      declared \"iec\" {\n        marked = true\n        listed = false\n      }\n    }"},
		"an attribute of a block inside": {
			func(d *rewrite.Document) error {
				return d.SetIn(block(t, d, `array "south"`), "string", "a", "parallel", "2")
			},
			"      \"slate-410\" = 2 # from the barn\n    }\n", "      \"slate-410\" = 2 # from the barn\n    }\n    parallel = 2\n"},
		"a block without attributes": {
			func(d *rewrite.Document) error { return d.Set(block(t, d, `array "south"`), "tilt", `"45 deg"`) },
			"array \"south\" {\n", "array \"south\" {\n  tilt = \"45 deg\"\n"},
		"a comment inside a value that is replaced": {
			func(d *rewrite.Document) error {
				return d.Set(block(t, d, `string "a"`), "panels", `{ "slate-410" = 3 }`)
			},
			"    panels = {\n      \"slate-410\" = 2 # from the barn\n    }\n", "    panels = { \"slate-410\" = 3 }\n    # from the barn\n"},
		"an attribute is taken out with its line": {
			func(d *rewrite.Document) error { return d.Remove(block(t, d, `bank "house"`), "series") },
			"  series   = 1\n", ""},
		"of an attribute that is taken out the comment stays": {
			func(d *rewrite.Document) error { return d.Remove(block(t, d, `bank "house"`), "battery") },
			`  battery = "fell-200" # bought in May`, `  # bought in May`},
		"taking out what is not there": {
			func(d *rewrite.Document) error { return d.Remove(block(t, d, `bank "house"`), "matched") }, "", ""},
		"a block becomes a comment": {
			func(d *rewrite.Document) error { return d.Silence(block(t, d, `reading "open"`), "of before:") },
			"reading \"open\" { # a fine day\n  value = \"72.1 V\"\n}", "# of before:\n# reading \"open\" { # a fine day\n#   value = \"72.1 V\"\n# }"},
		"a block is added behind another": {
			func(d *rewrite.Document) error {
				return d.InsertAfter(block(t, d, `string "a"`), "string \"b\" {\n  panels = { \"dusk\" = 1 }\n}")
			},
			"    }\n  }\n}\n\nreading", "    }\n  }\n\n  string \"b\" {\n    panels = { \"dusk\" = 1 }\n  }\n}\n\nreading"},
	} {
		d := open(t, sample)
		if err := c.edit(d); err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		got, err := d.Text()
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		if diff := cmp.Diff(strings.Replace(sample, c.from, c.to, 1), string(got)); diff != "" {
			t.Errorf("%s (-want +got):\n%s", name, diff)
		}
	}
}

// One attribute that a block does not have cannot get two values.
func TestTwiceTheSame(t *testing.T) {
	for _, twice := range []func(d *rewrite.Document, value string) error{
		func(d *rewrite.Document, value string) error {
			return d.Set(block(t, d, `bank "house"`), "matched", value)
		},
		func(d *rewrite.Document, value string) error { return d.Set(block(t, d, `fuse {`), "matched", value) },
		func(d *rewrite.Document, value string) error { return d.Set(block(t, d, `fuse {`), "rating", value) },
		func(d *rewrite.Document, value string) error {
			return d.SetIn(block(t, d, `fuse {`), "declared", "iec", "matched", value)
		},
	} {
		d := open(t, sample)
		if err := twice(d, "true"); err != nil {
			t.Fatal(err)
		}
		if err := twice(d, "false"); err == nil || !strings.Contains(err.Error(), "two changes meet at line") {
			t.Errorf("a second value: %v", err)
		}
	}
	if err := open(t, sample).SetIn(nil, "declared", "iec", "a", "1"); err == nil {
		t.Error("no block takes a value")
	}
}

// Lines that end with CRLF keep that, those put in get it.
func TestLineEnds(t *testing.T) {
	d := open(t, strings.ReplaceAll(sample, "\n", "\r\n"))
	for i := range d.Body().Blocks {
		b := &d.Body().Blocks[i]
		var err error
		switch b.Keyword {
		case "bank":
			err = d.Set(b, "matched", "true")
		case "array":
			err = d.InsertAfter(&b.Body.Blocks[0], "string \"b\" {\n  panels = { \"dusk\" = 1 }\n}")
		case "reading":
			err = d.Silence(b, "of before:")
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	got, err := d.Text()
	if err != nil {
		t.Fatal(err)
	}
	if bare := strings.ReplaceAll(string(got), "\r\n", ""); strings.ContainsAny(bare, "\r\n") {
		t.Errorf("a line ends otherwise than with CRLF:\n%q", got)
	}
	for _, want := range []string{"\r\n  matched  = true\r\n", "\r\n  string \"b\" {\r\n", "\r\n# of before:\r\n# reading \"open\" { # a fine day\r\n"} {
		if !bytes.Contains(got, []byte(want)) {
			t.Errorf("%q is not in\n%s", want, got)
		}
	}
}

func TestRefusals(t *testing.T) {
	if d, problems := rewrite.Open("f", []byte("a = \n")); d != nil || len(problems) == 0 || problems[0].At.Start.Line != 1 {
		t.Errorf("a text with an error was opened: %v", problems)
	}
	d := open(t, sample)
	b := block(t, d, `bank "house"`)
	if err := d.Set(b, "series", "2"); err != nil {
		t.Fatal(err)
	}
	if err := d.Set(b, "series", "3"); err == nil || !strings.Contains(err.Error(), "line 7") {
		t.Errorf("two changes of one value: %v", err)
	}
	for name, value := range map[string]string{
		"a value that ends the block": `1 }`, "a second line": "1\nparallel = 3", "no literal": "a.b", "a comment that swallows": "1 #",
		"an open quote": `"x`,
	} {
		d := open(t, sample)
		if err := d.Set(block(t, d, `bank "house"`), "series", value); err != nil {
			t.Fatal(err)
		}
		if text, err := d.Text(); err == nil && name != "a comment that swallows" {
			t.Errorf("%s is written:\n%s", name, text)
		}
	}
	if err := d.Silence(block(t, d, `fuse {`), "x"); err != nil { // alone on its line
		t.Errorf("a block on a line of its own: %v", err)
	}
	one := open(t, "a {\n  b { x = 1 }\n}\n")
	if err := one.Silence(&one.Body().Blocks[0].Body.Blocks[0], "x"); err != nil {
		t.Error(err)
	}
	flat := open(t, "a { b = 1 }\n")
	if err := flat.Set(nil, "x", "1"); err == nil {
		t.Error("an attribute of no block was set")
	}
}

// Comments in odd places stay, or the edit is refused.
func TestOddComments(t *testing.T) {
	for text, want := range map[string]string{
		"a {\n  x = [1, /* c */ 2]\n}\n":   "a {\n  x = 3 /* c */\n}\n",
		"a { x = 1 /* c */ }\n":            "a { x = 3 /* c */ }\n",
		"\uFEFF# h\na {\n  x = 1 # c\n}\n": "\uFEFF# h\na {\n  x = 3 # c\n}\n",
		"a { x = 1 } # c\n":                "a { x = 3 } # c\n",
		"a {\n  x = 1 // c\n}\n":           "a {\n  x = 3 // c\n}\n",
	} {
		d := open(t, text)
		if err := d.Set(&d.Body().Blocks[0], "x", "3"); err != nil {
			t.Fatal(err)
		}
		if got, err := d.Text(); err != nil || string(got) != want {
			t.Errorf("%q becomes %q, %v; want %q", text, got, err, want)
		}
	}
	d := open(t, "a { x = 1 } # c\n")
	if err := d.Silence(&d.Body().Blocks[0], "why"); err != nil {
		t.Fatal(err)
	}
	if got, err := d.Text(); err != nil || string(got) != "# why\n# a { x = 1 } # c\n" {
		t.Errorf("silenced: %q, %v", got, err)
	}
	d = open(t, "/* h\n more */ a {\n}\n")
	if err := d.Silence(&d.Body().Blocks[0], "why"); err == nil {
		t.Error("a block behind a comment on its line was silenced")
	}
}

// What is not laid out stays as it is but for the edit.
func TestUntidyStays(t *testing.T) {
	d := open(t, "a   {\n x=1\n      yy   =  2\n}\n")
	if err := d.Set(&d.Body().Blocks[0], "x", "3"); err != nil {
		t.Fatal(err)
	}
	got, err := d.Text()
	if want := "a   {\n x=3\n      yy   =  2\n}\n"; err != nil || string(got) != want {
		t.Errorf("%q, %v; want %q", got, err, want)
	}
}

// Over every example: setting any attribute to another value changes its bytes
// alone, whatever the line ends; all comments stay.
func TestAnyValueOfTheExamples(t *testing.T) {
	files, err := filepath.Glob("../../examples/*/*.design.hcl")
	if err != nil || len(files) < 5 {
		t.Fatalf("%d examples: %v", len(files), err)
	}
	texts := map[string][]byte{}
	for _, f := range files {
		if texts[f], err = os.ReadFile(f); err != nil {
			t.Fatal(err)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		text := texts[rapid.SampledFrom(files).Draw(t, "file")]
		if rapid.Bool().Draw(t, "crlf") {
			text = bytes.ReplaceAll(text, []byte("\n"), []byte("\r\n"))
		}
		d, problems := rewrite.Open("f", text)
		if len(problems) > 0 {
			t.Fatal(problems)
		}
		var all []*hcltext.Block
		var walk func(b *hcltext.Body)
		walk = func(b *hcltext.Body) {
			for i := range b.Blocks {
				all = append(all, &b.Blocks[i])
				walk(&b.Blocks[i].Body)
			}
		}
		walk(d.Body())
		b := rapid.SampledFrom(all).Draw(t, "block")
		name, at := "new_one", source.Range{}
		if len(b.Body.Attributes) > 0 && rapid.Bool().Draw(t, "known") {
			a := rapid.SampledFrom(b.Body.Attributes).Draw(t, "attribute")
			name, at = a.Name, a.Value.At
		}
		if err := d.Set(b, name, `"mark"`); err != nil {
			t.Fatal(err)
		}
		got, err := d.Text()
		if err != nil {
			t.Fatal(err)
		}
		if at.Valid() {
			want := string(text[:at.Start.Byte]) + `"mark"` + string(text[at.End.Byte:])
			if squeeze(string(got)) != squeeze(want) {
				t.Fatalf("more than the value changed:\n%s", cmp.Diff(squeeze(want), squeeze(string(got))))
			}
		}
		before, after := hcltext.Comments(text), hcltext.Comments(got)
		if len(before) != len(after) {
			t.Fatalf("%d comments before, %d after", len(before), len(after))
		}
		for i := range before {
			if before[i].Text != after[i].Text {
				t.Fatalf("comment %q became %q", before[i].Text, after[i].Text)
			}
		}
	})
}

// squeeze drops what a formatter may move.
func squeeze(text string) string { return strings.Join(strings.Fields(text), " ") }
