package source_test

import (
	"strings"
	"testing"

	"stringline/schema/source"
)

// A table may hold what no HCL file may (signs, brackets, templates), and nothing
// that hides or imitates text.
func TestGuardTable(t *testing.T) {
	for _, c := range []struct{ text, want string }{
		{"name,voc [V]\r\n\"a, \"\"b\"\"\",37.4\n${x},%{y},(1+2)\n\t;!|?\n", ""},
		{"\uFEFFna\u00efve,\u2212 27 \u00b0C\n", ""},
		{"======= a rule\n", ""},
		{strings.Repeat("x", source.MaxBytes), ""},
		{strings.Repeat("x", source.MaxBytes+1), "f:1:1: the table has 262145 bytes"},
		{"a\x00b\n", "f:1:2: found U+0000"},
		{"a\n\x1b[31m\n", "f:2:1: found U+001B"},
		{"a\xff\n", "f:1:2: the byte 0xFF is not UTF-8"},
		{"ab\u202e\n", "f:1:3: found U+202E"},
		{"ab\u200bc\n", "f:1:3: found U+200B"},
		{"a\rb\n", "f:1:2: a line ends with a carriage return (CR) alone"},
		{"a\n<<<<<<< ours\n", "f:2:1: unresolved merge conflict"},
		{"\xff\xfea\x00", "f:1:1: the file is UTF-16"},
	} {
		got := source.GuardTable(source.NewFile("f", []byte(c.text)))
		switch {
		case c.want == "" && len(got) > 0:
			t.Errorf("%.40q: %v", c.text, got)
		case c.want != "" && (len(got) == 0 || !strings.HasPrefix(got[0].Error(), c.want)):
			t.Errorf("%.40q: %v, want %s", c.text, got, c.want)
		}
	}
	// A text of nothing but bad characters gives a bounded list.
	if got := source.GuardTable(source.NewFile("f", []byte(strings.Repeat("\x01\n", 2000)))); len(got) == 0 || len(got) > source.MaxProblems {
		t.Errorf("%d problems", len(got))
	}
}
