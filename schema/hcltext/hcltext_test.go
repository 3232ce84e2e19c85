package hcltext_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"stringline/schema/hcltext"
	"stringline/schema/source"
)

func parse(text string) (*hcltext.Body, source.Problems, bool) {
	return hcltext.Parse(source.NewFile("f", []byte(text)))
}

// show writes a literal back in one form.
func show(l hcltext.Literal) string {
	switch l.Kind {
	case hcltext.String:
		return "s:" + l.Text
	case hcltext.Number:
		return "n:" + l.Text
	case hcltext.Bool:
		if l.Yes {
			return "yes"
		}
		return "no"
	case hcltext.List:
		var items []string
		for _, i := range l.Items {
			items = append(items, show(i))
		}
		return "[" + strings.Join(items, " ") + "]"
	case hcltext.Object:
		var items []string
		for _, p := range l.Pairs {
			items = append(items, p.Key+"="+show(p.Value))
		}
		return "{" + strings.Join(items, " ") + "}"
	}
	return "bad"
}

func TestLiterals(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{`37`, "n:37"}, {`-0.50`, "n:-0.50"}, {`0`, "n:0"},
		{`true`, "yes"}, {`false`, "no"},
		{`"37.4 V"`, "s:37.4 V"}, {`""`, "s:"},
		{`"a\"b\\c\n\t"`, "s:a\"b\\c\n\t"},
		{`"\u00b0C \U000003A9"`, "s:°C Ω"},
		{`"50 %"`, "s:50 %"}, {`"$ 5"`, "s:$ 5"},
		// Two spellings of é stay two: HCL's own strings would make them one.
		{"\"e\u0301\"", "s:e\u0301"}, {"\"\u00e9\"", "s:\u00e9"},
		{`[]`, "[]"}, {`["a", 1, true,]`, "[s:a n:1 yes]"},
		{"[\n  \"a\", # one\n  \"b\",\n]", "[s:a s:b]"},
		{`{}`, "{}"}, {`{ "slate-410" = 2, dusk = 1 }`, "{slate-410=n:2 dusk=n:1}"}, {"{\n \"a\" = 1\n \"b\" = 2\n}", "{a=n:1 b=n:2}"},
		{`{ "a" : 1 }`, "{a=n:1}"}, {`{ slate-410 = 2 }`, "{slate-410=n:2}"},
	} {
		body, problems, broken := parse("x = " + c.text + "\n")
		if len(problems) > 0 || broken {
			t.Errorf("%s: %v", c.text, problems)
			continue
		}
		if got := show(body.Attributes[0].Value); got != c.want {
			t.Errorf("%s is read as %s, want %s", c.text, got, c.want)
		}
	}
}

// What is no literal is a problem at its place, whether the guard or the
// parser's tree finds it.
func TestWhatIsNoLiteral(t *testing.T) {
	for _, text := range []string{
		`word`, `a.b`, `a[0]`, `f(1)`, `1 + 2`, `!true`, `(1)`, `a ? 1 : 2`, `null`, `[for a in b : a]`, `{for a in b : a => a}`,
		`"${a}"`, `"a ${b} c"`, `"%{if a}b%{endif}"`, `a.*.b`, `-true`, `--1`, `[1, x]`, `{ "a" = y }`, `{ "a" = 1, "a" = 2 }`, `{ (a) = 1 }`, `"\u0000"`,
		`"\u202e"`, `"\u200b"`, `"\ud800"`, `1e5`,
	} {
		_, problems, _ := parse("ok = 1\nx = " + text + "\n")
		if len(problems) != 1 {
			t.Errorf("%s: %d problems, want 1: %v", text, len(problems), problems)
			continue
		}
		if p := problems[0]; p.At.Start.Line != 2 || p.At.Start.Column < 5 || p.Message == "" || p.Kind == "" {
			t.Errorf("%s: the problem is %+v", text, p)
		}
	}
	_, problems, _ := parse("x = <<END\ntext\nEND\n")
	if len(problems) == 0 || problems[0].At.Start.Line != 1 {
		t.Errorf("a heredoc: %v", problems)
	}
}

func TestPlaces(t *testing.T) {
	body, problems, _ := parse("a \"é\" b {\n  c = \"°\"\n  d {\n  }\n}\n")
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	b := body.Blocks[0]
	got := map[string]string{
		"header":  b.Header.String(),
		"label 2": b.Labels[1].At.String(),
		"name":    b.Body.Attributes[0].NameAt.String(),
		"value":   b.Body.Attributes[0].Value.At.String(),
		"inner":   b.Body.Blocks[0].Header.String(),
	}
	want := map[string]string{"header": "f:1:1", "label 2": "f:1:7", "name": "f:2:3", "value": "f:2:7", "inner": "f:3:3"}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("places (-want +got):\n%s", diff)
	}
	if b.Header.End.Column != 8 || b.Header.End.Line != 1 || b.Whole.End.Line != 5 || b.Whole.End.Column != 2 {
		t.Errorf("the header ends at %+v, the block at %+v", b.Header.End, b.Whole.End)
	}
	if b.Labels[0].Text != "é" || b.Labels[1].Text != "b" {
		t.Errorf("labels %q and %q", b.Labels[0].Text, b.Labels[1].Text)
	}
	if b.Body.Attributes[0].Value.At.End.Column != 10 {
		t.Errorf("the value ends in column %d", b.Body.Attributes[0].Value.At.End.Column)
	}
}

func TestSyntaxErrors(t *testing.T) {
	for _, c := range []struct {
		text, place string
		kept        int // attributes that are still read
	}{
		{"a = \nb = 2\n", "f:1:", 1},
		{"a = 1\nb 2\nc = 3\n", "f:2:", 2},
		{"a = 1 b = 2\n", "f:1:", 0},
		{"x {\n", "f:1:", 0},
		{"}\n", "f:1:1", 0},
		{"\"a\" = 1\n", "f:1:1", 0},
	} {
		body, problems, broken := parse(c.text)
		if len(problems) == 0 || !broken || !strings.HasPrefix(problems[0].At.String(), c.place) {
			t.Errorf("%q: broken %v, %v", c.text, broken, problems)
		}
		kept := 0
		for _, a := range body.Attributes {
			if a.Value.Kind != hcltext.Bad {
				kept++
			}
		}
		if kept < c.kept {
			t.Errorf("%q: %d attributes were kept, want %d", c.text, kept, c.kept)
		}
	}
	_, problems, broken := parse("a = 1\na = 2\n")
	want := `f:2:1: a is given twice in one block`
	if len(problems) != 1 || problems[0].Error() != want || broken {
		t.Errorf("an attribute twice: broken %v, %v; want %s", broken, problems, want)
	}
}

// A text that is written in quotes comes back as it was, and an unquoted
// problem never reaches outside the file.
func TestStringsComeBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		want := rapid.StringOf(rapid.RuneFrom([]rune("aZ0 °Ω²é-_.%$/#'"))).Draw(t, "text")
		body, problems, _ := parse("x = \"" + want + "\"\n")
		if len(problems) > 0 {
			t.Fatalf("%q: %v", want, problems)
		}
		if got := body.Attributes[0].Value.Text; got != want {
			t.Fatalf("%q came back as %q", want, got)
		}
	})
}

func TestNoPanic(t *testing.T) {
	pieces := []string{"a", "x1", " ", "\n", "\r\n", "{", "}", "[", "]", "(", ")", "=", ",", ":", "\"", "\\", "${", "%{", "<<E", "1", "-", ".", "null", "true", "#", "/*", "*/", "é", "\u0301", "°"}
	rapid.Check(t, func(t *rapid.T) {
		text := strings.Join(rapid.SliceOfN(rapid.SampledFrom(pieces), 0, 60).Draw(t, "pieces"), "")
		f := source.NewFile("f", []byte(text))
		body, problems, broken := hcltext.Parse(f)
		if body == nil || broken && len(problems) == 0 {
			t.Fatalf("%q: body %v, broken %v without a problem", text, body, broken)
		}
		for _, p := range problems {
			if !p.At.Valid() || p.At.Start.Byte > len(text) || p.At.Start != f.Position(p.At.Start.Byte) {
				t.Fatalf("%q: a problem without a place: %+v", text, p)
			}
		}
		var walk func(hcltext.Literal) bool
		walk = func(l hcltext.Literal) bool {
			bad := l.Kind == hcltext.Bad
			for _, i := range l.Items {
				bad = walk(i) || bad
			}
			for _, p := range l.Pairs {
				bad = walk(p.Value) || bad
			}
			return bad
		}
		for _, a := range body.Attributes {
			if walk(a.Value) && len(problems) == 0 {
				t.Fatalf("%q: a bad value without a problem", text)
			}
		}
	})
}

func TestShorten(t *testing.T) {
	if got := hcltext.Shorten(strings.Repeat("°", 60)); got != strings.Repeat("°", 60) {
		t.Errorf("60 characters became %q", got)
	}
	if got := hcltext.Shorten(strings.Repeat("°", 61)); got != strings.Repeat("°", 60)+"…" {
		t.Errorf("61 characters became %q", got)
	}
}
