package source

import (
	"bytes"
	"fmt"
)

// GuardTable looks at a text that is no HCL, such as a table of comma-separated
// values, before anything reads it: its size, its encoding, characters that hide,
// reverse or imitate text, line ends, an unresolved merge. No problems means that
// the text reads as it is stored; what it says is its reader's business.
func GuardTable(f *File) Problems {
	if len(f.Text) > MaxBytes {
		return Problems{{
			Kind:     kindSize,
			Message:  fmt.Sprintf("the table has %d bytes; at most %d (256 KiB) are read: split it", len(f.Text), MaxBytes),
			Expected: fmt.Sprintf("at most %d bytes", MaxBytes),
			Found:    fmt.Sprintf("%d bytes", len(f.Text)),
			At:       f.Range(0, 0),
		}}
	}
	if p := notText(f); p != nil {
		return Problems{*p}
	}
	g := &guard{file: f, text: f.Text, told: map[string]int{}}
	if bytes.HasPrefix(g.text, []byte(byteOrderMark)) {
		g.at = len(byteOrderMark)
	}
	for g.at < len(g.text) && !g.stop {
		switch {
		case g.text[g.at] == '\n':
			g.at++
		case g.text[g.at] == '\r':
			g.carriageReturn()
		case g.atLineStart() && g.conflictMarker(false):
		default:
			g.rune(inString)
		}
	}
	return g.problems
}
