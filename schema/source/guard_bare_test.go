package source_test

import (
	"strings"
	"testing"

	"stringline/schema/source"
)

// A block whose opening brace is missing is told where it begins: the parser's own
// complaint would stand at the last brace of the file.
func TestABlockWithoutItsBrace(t *testing.T) {
	const good = "site {\n  coldest = \"-27 degC\"\n}\n\n# the roof\narray \"roof\" { # south\n  tilt = \"45 deg\"\n\n  string \"a\" {\n    panels = { \"p\" = 2 }\n  }\n}\n"
	if problems := source.Guard(source.NewFile("f", []byte(good))); len(problems) > 0 {
		t.Fatal(problems)
	}
	for _, c := range []struct{ old, new, want string }{
		{"site {", "site", "f:1:1: a block begins here without its"},
		{"array \"roof\" { #", "array \"roof\" #", "f:6:1: a block begins here without its"},
		{"string \"a\" {", "string \"a\" ", "f:9:3: a block begins here without its"},
		{"string \"a\" {\n", "string \"a\"\r\n", "f:9:3: a block begins here without its"},
		{"  }\n}\n", "  }\n}\n}\n", `f:13:1: found "}", but nothing is open`}, // one too many is told as before
	} {
		text := strings.Replace(good, c.old, c.new, 1)
		if text == good {
			t.Fatalf("%q is not there", c.old)
		}
		problems := source.Guard(source.NewFile("f", []byte(text)))
		if len(problems) != 1 || !strings.HasPrefix(problems[0].Error(), c.want) {
			t.Errorf("%q: %v; want %q", c.new, problems, c.want)
		}
	}
}
