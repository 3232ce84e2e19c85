package report

import (
	"bytes"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// What is too long for its column is left whole on a line of its own; what stands
// beside it goes on in the column, and no line is left empty.
func TestPiecesTooLongForTheirColumn(t *testing.T) {
	for name, c := range map[string]struct {
		pieces []string
		want   string
	}{
		"first":   {[]string{"huts/larch-col/hut.design.hcl:41:1,", "12:3"}, "  where\n    huts/larch-col/hut.design.hcl:41:1,\n           12:3\n"},
		"last":    {[]string{"a.hcl:1:1", "  huts/larch-col/hut.design.hcl:41:1"}, "  where    a.hcl:1:1\n    huts/larch-col/hut.design.hcl:41:1\n"},
		"between": {[]string{"a.hcl:1:1", "huts/larch-col/hut.design.hcl:41:1", "b.hcl:1:1"}, "  where    a.hcl:1:1\n    huts/larch-col/hut.design.hcl:41:1\n           b.hcl:1:1\n"},
		"longest": {[]string{"huts/larch-col/of-the-north/hut.design.hcl:41:1"}, "  where\n  huts/larch-col/of-the-north/hut.design.hcl:41:1\n"},
		"exactly": {[]string{strings.Repeat("x", 29)}, "  where    " + strings.Repeat("x", 29) + "\n"},
		"one on":  {[]string{strings.Repeat("x", 30)}, "  where\n    " + strings.Repeat("x", 30) + "\n"},
		"none":    {nil, "  where\n"},
	} {
		p := newPage(Page{Width: 40})
		p.label("where").wrapPieces(c.pieces, " ", plain)
		if diff := cmp.Diff(c.want, p.take()); diff != "" {
			t.Errorf("%s (-want +got):\n%s", name, diff)
		}
	}
}

// A pair of texts is broken where it must be; neither is cut.
func TestPair(t *testing.T) {
	long := "LARCH COL HUT, AS FOUND, was LARCH COL HUT, revision C"
	for _, c := range []struct{ left, right, want string }{
		{"A", "b", "A" + strings.Repeat(" ", 37) + "b\n"},
		{long, "b", "LARCH COL HUT, AS FOUND, was LARCH COL\nHUT, revision C\n" + strings.Repeat(" ", 38) + "b\n"},
		{"A", "lines 1, 7, 8, 9, 10, 11, 12, 13, 18, 14, 15", "A\n  lines 1, 7, 8, 9, 10, 11, 12, 13, 18,\n  14, 15\n"},
		{"", "b", "b\n"},
	} {
		p := newPage(Page{Width: 40})
		p.pair(p.line(), c.left, c.right)
		if diff := cmp.Diff(c.want, p.take()); diff != "" {
			t.Errorf("%q, %q (-want +got):\n%s", c.left, c.right, diff)
		}
	}
}

// Where no word is longer than the page, no line is, whatever the width: facts and
// worksheets with lists, long values and long names.
func TestLinesKeepToTheWidth(t *testing.T) {
	d := loaded(t, small)
	var ids []string
	for _, s := range subjects(d.System) {
		for _, r := range factsOf(d.System, s) {
			ids = append(ids, r.fact.ID)
		}
	}
	for width := 40; width <= 100; width += 12 {
		var b bytes.Buffer
		if err := Facts(&b, d, Page{Width: width}); err != nil {
			t.Fatal(err)
		}
		for _, id := range ids {
			b.Write(worksheet(t, d, id, Page{Width: width}))
		}
		for line := range strings.Lines(b.String()) {
			line = strings.TrimSuffix(line, "\n")
			words := strings.Fields(line)
			if columns(line) > width && len(words) > 1 {
				t.Errorf("%d columns: %q", width, line)
			}
			if line != "" && strings.TrimSpace(line) == "" {
				t.Errorf("%d columns: a line of blanks", width)
			}
		}
	}
}
