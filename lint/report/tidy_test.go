package report_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"stringline/lint/report"
)

func TestTidied(t *testing.T) {
	files := []report.TidiedFile{
		{File: "a.design.hcl", Before: []byte("x = 1\n"), After: []byte("x = 1\n")},
		{File: "b\x1b[31m.design.hcl", Before: []byte("\uFEFFx=1  \r\n\n\n\ny = \"\x1b[2J\"   \nz = 1"), After: []byte("x = 1\n\ny = \"\x1b[2J\"\nz = 1\n")},
	}
	for _, c := range []struct {
		only bool
		want string
	}{
		{false, "b\\x1b[31m.design.hcl\n1 file laid out anew, 1 tidy already.\n"},
		{true, `b\x1b[31m.design.hcl
  its byte order mark goes
  1 of 5 line ends with CRLF, the others with LF; all become LF
  line 1     is       x=1  
             becomes  x = 1
  line 5     3 blank lines before it, 1 due
  line 5     blanks at its end
  no line end behind its last line

1 file not tidy, 1 tidy.
`},
	} {
		var b strings.Builder
		if err := report.Tidied(&b, files, c.only, report.Page{}); err != nil {
			t.Fatal(err)
		}
		if diff := cmp.Diff(c.want, b.String()); diff != "" {
			t.Errorf("only %v (-want +got):\n%s", c.only, diff)
		}
	}
}
