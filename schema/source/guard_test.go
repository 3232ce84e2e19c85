package source_test

import (
	"bytes"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"runtime"
	"strings"
	"testing"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"

	"stringline/schema/source"
)

// allocated runs f and gives the bytes that it allocated in all, freed or not:
// never less than what it held at once.
func allocated(f func()) uint64 {
	var before, after runtime.MemStats
	runtime.ReadMemStats(&before)
	f()
	runtime.ReadMemStats(&after)
	return after.TotalAlloc - before.TotalAlloc
}

// The bar is under 300 MB for each; the guard stays far below it, and being one
// loop its time goes with the bytes. 32 MB holds the index of places and a
// hundred sentences.
func TestBombsAreRefused(t *testing.T) {
	const most = 32 << 20
	for name, text := range bombs() {
		t.Run(name, func(t *testing.T) {
			content := []byte(text)
			var got source.Problems
			var f *source.File
			if used := allocated(func() {
				f = source.NewFile("bomb", content)
				got = source.Guard(f)
			}); used > most {
				t.Errorf("allocated %d bytes, want at most %d", used, most)
			}
			if len(got) == 0 {
				t.Fatal("not refused")
			}
			if len(got) > source.MaxProblems {
				t.Errorf("%d problems, want at most %d", len(got), source.MaxProblems)
			}
			for _, p := range got {
				checkWellFormed(t, f, p)
				if len(p.Message) > 400 {
					t.Errorf("message of %d bytes", len(p.Message))
				}
			}
		})
	}
}

// A file of 100 MB is refused by its size: nothing of it is looked at.
func TestHundredMegabytes(t *testing.T) {
	text := bytes.Repeat([]byte("\n"), 100<<20)
	var got source.Problems
	used := allocated(func() { got = source.Guard(source.NewFile("large", text)) })
	if len(got) != 1 || got[0].Kind != "size" || got[0].At.Start.Line != 1 {
		t.Errorf("Guard = %v, want one problem of size", got)
	}
	if used > 32<<20 {
		t.Errorf("allocated %d bytes beside the text", used)
	}
}

// Exactly at each limit, and one beyond.
func TestLimits(t *testing.T) {
	nested := func(n int) string { return strings.Repeat("a {\n", n) + strings.Repeat("}\n", n) }
	tests := []struct {
		name          string
		within, above string
		kind          string
	}{
		{"bytes", "#" + strings.Repeat("a", source.MaxBytes-1), "#" + strings.Repeat("a", source.MaxBytes), "size"},
		{"tokens", strings.Repeat("\n", source.MaxTokens), strings.Repeat("\n", source.MaxTokens+1), "size"},
		{"depth", nested(source.MaxDepth), nested(source.MaxDepth + 1), "size"},
		{"digits", "a = " + strings.Repeat("1", source.MaxDigits), "a = " + strings.Repeat("1", source.MaxDigits+1), "number"},
		{"signs", "a = \"" + strings.Repeat("%", source.MaxSigns) + "\"", "a = \"" + strings.Repeat("$", source.MaxSigns+1) + "\"", "size"},
		{"digits after the point", "a = 1." + strings.Repeat("1", source.MaxDigits-1), "a = 1." + strings.Repeat("1", source.MaxDigits), "number"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			if got := source.Guard(source.NewFile("f", []byte(tt.within))); len(got) > 0 {
				t.Errorf("at the limit: %v", got)
			}
			got := source.Guard(source.NewFile("f", []byte(tt.above)))
			if len(got) != 1 || got[0].Kind != tt.kind {
				t.Errorf("beyond the limit: %v, want one problem of kind %q", got, tt.kind)
			}
		})
	}
}

func TestAtMostOneHundredProblems(t *testing.T) {
	for lines, want := range map[int]int{98: 98, 99: 99, 100: 100, 101: 100, 5000: 100} {
		got := source.Guard(source.NewFile("f", []byte(strings.Repeat("a = ;\n", lines))))
		if len(got) != want {
			t.Errorf("%d bad lines give %d problems, want %d", lines, len(got), want)
		}
		if says := strings.Contains(got[len(got)-1].Message, "not listed"); says != (lines >= 100) {
			t.Errorf("%d bad lines: the last problem reads %q", lines, got[len(got)-1].Message)
		}
	}
}

func TestAcceptedTextsAreCheapToParse(t *testing.T) {
	const most = 300 << 20
	for name, text := range largestAccepted() {
		t.Run(name, func(t *testing.T) {
			content := []byte(text)
			if got := source.Guard(source.NewFile("f", content)); len(got) > 0 {
				t.Fatalf("refused: %v", got[0])
			}
			if used := allocated(func() { parse(content) }); used > most {
				t.Errorf("the parser allocated %d MB, want at most %d", used>>20, most>>20)
			}
		})
	}
}

func parse(text []byte) (*hcl.File, hcl.Diagnostics) {
	return hclsyntax.ParseConfig(text, "f", hcl.InitialPos)
}

// HCL's own lexer counts what the guard counts, or less: a limit of the guard
// is a limit for the parser. (The end of the file is HCL's one token more.)
func checkTokens(t *testing.T, name string, text []byte) {
	t.Helper()
	tokens, _ := hclsyntax.LexConfig(text, "f", hcl.InitialPos)
	if len(tokens)-1 > source.CountTokens(text) {
		t.Errorf("%s: HCL has %d tokens, the guard counts %d", name, len(tokens)-1, source.CountTokens(text))
	}
}

func TestTokenCountAgreesWithHCL(t *testing.T) {
	for name, text := range largestAccepted() {
		checkTokens(t, name, []byte(text))
	}
	for _, name := range []string{"sample.design.hcl", "workshop.hcl"} {
		text, err := os.ReadFile(filepath.Join("testdata", name))
		if err != nil {
			t.Fatal(err)
		}
		checkTokens(t, name, text)
		tokens, _ := hclsyntax.LexConfig(text, "f", hcl.InitialPos)
		// Roughly the same, not merely more: comments count their line end apart.
		if counted := source.CountTokens(text); counted > len(tokens)*5/4 {
			t.Errorf("%s: HCL has %d tokens, the guard counts %d", name, len(tokens), counted)
		}
	}
}

// A byte order mark shifts HCL's offsets as it shifts ours, so that the
// parser's places can be used as they are.
func TestPlacesAgreeWithHCL(t *testing.T) {
	text := []byte("\uFEFF# é°\r\nsite {\r\n  place = \"boat °\" # \U0001F50B\r\n  x = 5\r\n}\r\n")
	f := source.NewFile("f", text)
	if got := source.Guard(f); len(got) > 0 {
		t.Fatal(got)
	}
	file, diagnostics := parse(text)
	if diagnostics.HasErrors() {
		t.Fatal(diagnostics)
	}
	body := file.Body.(*hclsyntax.Body)
	attribute := body.Blocks[0].Body.Attributes["x"]
	at := f.Range(attribute.Expr.Range().Start.Byte, attribute.Expr.Range().End.Byte)
	if string(text[at.Start.Byte:at.End.Byte]) != "5" || at.Start.Line != 4 || at.Start.Column != 7 {
		t.Errorf("the value of x is at %v, want f:4:7", at)
	}
}

// Random pieces of the language and of its misuse, put together in any order:
// what the guard accepts the parser must take without a panic.
func TestRandomTexts(t *testing.T) {
	pieces := []string{"a", "bank", " ", "\n", "\r\n", "=", "{", "}", "[", "]", ",", ":", "\"", "\"x\"", "\"5 %\"", "1", "-1", "0.5",
		"#c\n", "//", "/*", "*/", "true", "\\", "\\n", "$", "%", "°", "\u200b", "null", "for", ".", "<<A\n", "\x00", "\xff", "\uFEFF", "(", "?", "-", "\r"}
	random := rand.New(rand.NewPCG(1, 2)) // fixed: a failure can be repeated
	accepted := 0
	for range 20_000 {
		var b strings.Builder
		for range random.IntN(16) {
			b.WriteString(pieces[random.IntN(len(pieces))])
		}
		if checkGuarded(t, []byte(b.String())) {
			accepted++
		}
	}
	if accepted < 100 {
		t.Errorf("only %d of the random texts were accepted: the test tries too little", accepted)
	}
}

func checkGuarded(t *testing.T, text []byte) (accepted bool) {
	f := source.NewFile("f", text)
	problems := source.Guard(f)
	for _, p := range problems {
		checkWellFormed(t, f, p)
	}
	if len(problems) > 0 {
		return false
	}
	file, diagnostics := parse(text)
	if file == nil {
		t.Errorf("the parser gives no file for %q: %v", text, diagnostics)
	}
	checkTokens(t, fmt.Sprintf("%q", text), text)
	// Every place that the parser names is a place of the file.
	for _, d := range diagnostics {
		if d.Subject != nil {
			if at := f.Range(d.Subject.Start.Byte, d.Subject.End.Byte); !at.Valid() {
				t.Errorf("no place for %v in %q", d, text)
			}
		}
	}
	return true
}

func FuzzGuard(f *testing.F) {
	files, err := filepath.Glob(filepath.Join(hostileFolder, "*.design.hcl"))
	if err != nil {
		f.Fatal(err)
	}
	for _, file := range append(files, "testdata/sample.design.hcl", "testdata/workshop.hcl") {
		text, err := os.ReadFile(file)
		if err != nil {
			f.Fatal(err)
		}
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text []byte) { checkGuarded(t, text) })
}

// A problem names the block that it stands in, as far as a scan can tell.
func TestBlockOfAProblem(t *testing.T) {
	tests := []struct{ text, want string }{
		{"x = (1)\n", ""},
		{"site {\n  place = (1)\n}\n", "site"},
		{"design \"Larch Col hut\" {\n  revision = (1)\n}\n", "design"},
		{"site {}\nbank \"house\" {\n  main {\n    fuse { rating = (1) }\n  }\n}\n", "bank.house"},
		{"waiver \"practice.voltage_drop\" {\n  on = [(1)]\n}\n", "waiver.practice.voltage_drop"},
		{"bank \"ho\\u00e9se\" {\n  series = (1)\n}\n", "bank"},
		{"bank \"house\" {\n}\nx = { a = (1) }\n", ""},
		{"bank \"house\" {\n", "bank.house"},
		{"bank \"" + strings.Repeat("a", 1000) + "\" { series = (1) }\n", "bank"},
	}
	for _, tt := range tests {
		got := source.Guard(source.NewFile("f", []byte(tt.text)))
		if len(got) != 1 || got[0].Block != tt.want {
			t.Errorf("%.60q: %+v, want one problem in block %q", tt.text, got, tt.want)
		}
	}
}
