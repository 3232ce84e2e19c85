package hcltext

import (
	"bytes"
	"fmt"
	"strings"

	"github.com/hashicorp/hcl/v2"
	"github.com/hashicorp/hcl/v2/hclsyntax"
	"github.com/hashicorp/hcl/v2/hclwrite"

	"stringline/schema/source"
)

// mostLaidOut bounds the bytes that a layout can take: the formatter fills
// columns, so one very long name beside many lines would take gigabytes.
const mostLaidOut = 16 << 20

// Tidy gives a text in canonical layout, or the problems for which it cannot:
// those of [Parse], at their places. It changes blanks and line ends alone.
// What stands in quotes, every comment and the order of everything stay.
//
// The layout is that of HCL's own formatter (two spaces a level, the equals
// signs and the comments of neighboring lines in a column), of which the result
// is a fixed point, and besides:
//
//   - no blanks at the end of a line, comments included
//   - one blank line where there were several; none at the beginning of the
//     file, at its end, behind an opening bracket and before a closing one
//   - at the top level a blank line on either side of what takes several lines;
//     the comment lines right above a block belong to it
//   - one line end behind the last line; a file whose lines all end with CRLF
//     keeps that, any other gets LF
//   - no byte order mark
//
// Tidying a tidy text gives the same text. The tokens of the result are held
// against those of the text: should they differ, that is a problem and there is
// no result.
func Tidy(f *source.File) (tidy []byte, problems source.Problems) {
	if _, problems, _ = Parse(f); len(problems) > 0 {
		return nil, problems
	}
	refuse := func(message string) ([]byte, source.Problems) {
		return nil, source.Problems{{Kind: "layout", Message: "laying out the file: " + message, At: f.Range(0, 0)}}
	}
	text, crlf := plainLines(f.Text)
	if laidOut(text) > mostLaidOut {
		return refuse("its lines are too long to stand in columns")
	}
	settled, ok := settle(text)
	if !ok {
		return refuse("its layout does not settle; put each attribute and each block on a line of its own")
	}
	if !bytes.Equal(tokens(text), tokens(settled)) {
		return refuse("more than blanks would change; put each attribute and each block on a line of its own")
	}
	if crlf {
		settled = bytes.ReplaceAll(settled, []byte("\n"), []byte("\r\n"))
	}
	if _, problems, _ = Parse(source.NewFile(f.Name, settled)); len(problems) > 0 {
		return refuse("laid out, it would not be read any more (" + problems[0].Message + ")")
	}
	return settled, nil
}

// plainLines gives the text without byte order mark and with LF line ends, and
// tells whether every line ended with CRLF.
func plainLines(text []byte) (plain []byte, crlf bool) {
	text = bytes.TrimPrefix(text, []byte("\uFEFF"))
	pairs := bytes.Count(text, []byte("\r\n"))
	crlf = pairs > 0 && pairs == bytes.Count(text, []byte("\n"))
	return bytes.ReplaceAll(text, []byte("\r\n"), []byte("\n")), crlf
}

// laidOut is the most bytes that columns can make of a text: every line of a run
// without a blank line as long as the longest.
func laidOut(text []byte) int {
	total, lines, longest := 0, 0, 0
	for line := range bytes.Lines(text) {
		if len(bytes.TrimSpace(line)) == 0 {
			total, lines, longest = total+lines*longest, 0, 0
			continue
		}
		lines++
		longest = max(longest, len(line)+maxIndent)
	}
	return total + lines*longest
}

// maxIndent is how far a line can stand in: two spaces for each open bracket.
const maxIndent = 2 * source.MaxDepth

// settle lays out until nothing changes. ok is false where that does not come
// about, which no text is known to do.
func settle(text []byte) (settled []byte, ok bool) {
	defer func() {
		if recover() != nil { // the formatter is not ours, and the file must not end the program
			settled, ok = nil, false
		}
	}()
	const most = 10
	for range most {
		formatted := hclwrite.Format(text)
		next := blankLines(formatted)
		if bytes.Equal(next, text) {
			return text, bytes.Equal(formatted, text)
		}
		text = next
	}
	return nil, false
}

// tokens gives the text's tokens in one form, without what a layout may change:
// blanks, how many line ends follow each other, blanks at the end of a comment's
// lines. Equal tokens have one meaning.
func tokens(text []byte) []byte {
	var b bytes.Buffer
	lexed, _ := hclsyntax.LexConfig(text, "", hcl.InitialPos)
	ended := true // a line end stands before, or the beginning
	end := func() {
		if !ended {
			b.WriteByte('\n')
		}
		ended = true
	}
	for _, t := range lexed {
		switch t.Type {
		case hclsyntax.TokenNewline:
			end()
		case hclsyntax.TokenEOF:
			end()
		case hclsyntax.TokenComment:
			for line := range strings.Lines(string(t.Bytes)) {
				fmt.Fprintf(&b, "%q", strings.TrimRight(line, " \t\n"))
			}
			ended = false
			if bytes.HasSuffix(t.Bytes, []byte("\n")) {
				end()
			}
		default:
			fmt.Fprintf(&b, "%c%q", t.Type, t.Bytes)
			ended = false
		}
	}
	return b.Bytes()
}
