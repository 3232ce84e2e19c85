package report

import (
	"bytes"
	"fmt"
	"io"
	"strings"
)

// TidiedFile is a file whose layout was looked at.
type TidiedFile struct {
	File          string // as shown to people
	Before, After []byte // equal where the file is tidy
}

// Changes reports whether the file was not tidy.
func (t *TidiedFile) Changes() bool { return !bytes.Equal(t.Before, t.After) }

// Tidied says which files were laid out anew. Where only is set nothing was
// written, and it shows each line that would change: as it is and as it becomes.
// A layout neither joins nor splits lines, so line follows line.
func Tidied(w io.Writer, files []TidiedFile, only bool, opts Page) error {
	p := newPage(opts)
	changed := 0
	for i := range files {
		if !files[i].Changes() {
			continue
		}
		changed++
		p.line().put(files[i].File, plain).end()
		if only {
			p.changes(&files[i])
			p.blank()
		}
	}
	tidy := len(files) - changed
	what, already := "laid out anew", " already"
	if only {
		what, already = "not tidy", ""
	}
	switch {
	case len(files) == 0:
		return nil // the problems say why
	case changed == 0:
		p.line().wrap(fmt.Sprintf("Nothing to tidy in %s.", count(tidy, "file", "files")), plain)
	default:
		p.line().wrap(fmt.Sprintf("%s %s, %d tidy%s.", count(changed, "file", "files"), what, tidy, already), plain)
	}
	return p.flush(w)
}

// fileLine is one line that is not blank, and how many blank ones stand before it.
type fileLine struct {
	number int // in the file, from 1
	blanks int
	text   string
}

func linesOf(text []byte) (lines []fileLine, after int) {
	number := 0
	for line := range bytes.Lines(text) {
		number++
		shown := strings.TrimRight(string(line), "\r\n")
		if strings.Trim(shown, " \t") == "" {
			after++
			continue
		}
		lines = append(lines, fileLine{number: number, blanks: after, text: shown})
		after = 0
	}
	return lines, after
}

const byteOrderMark = "\uFEFF"

func (p *page) changes(t *TidiedFile) {
	was, wasAfter := linesOf(bytes.TrimPrefix(t.Before, []byte(byteOrderMark)))
	is, _ := linesOf(t.After)
	if bytes.HasPrefix(t.Before, []byte(byteOrderMark)) {
		p.line().to(2).wrap("its byte order mark goes", plain)
	}
	if ends := bytes.Count(t.Before, []byte("\r\n")); ends > 0 && !bytes.Contains(t.After, []byte("\r\n")) {
		p.line().to(2).wrap(fmt.Sprintf("%d of %s with CRLF, the others with LF; all become LF", ends, count(bytes.Count(t.Before, []byte("\n")), "line end", "line ends")), plain)
	}
	for i := range min(len(was), len(is)) {
		a, b := was[i], is[i]
		at := func() *line { return p.line().to(2).put(fmt.Sprintf("line %d", a.number), plain).to(13) }
		if a.blanks != b.blanks {
			at().wrap(fmt.Sprintf("%s before it, %d due", count(a.blanks, "blank line", "blank lines"), b.blanks), plain)
		}
		switch {
		case a.text == b.text:
		case strings.TrimRight(a.text, " \t") == b.text:
			at().put("blanks at its end", plain).end()
		default:
			at().put("is", plain).to(22).put(a.text, plain).end()
			p.line().to(13).put("becomes", plain).to(22).put(b.text, plain).end()
		}
	}
	if wasAfter > 0 {
		p.line().to(2).put(count(wasAfter, "blank line", "blank lines")+" at its end", plain).end()
	}
	if len(t.Before) > 0 && !bytes.HasSuffix(t.Before, []byte("\n")) {
		p.line().to(2).put("no line end behind its last line", plain).end()
	}
}
