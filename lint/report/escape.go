package report

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"
)

// Escape makes a text from a design or a codebook safe to show on one line:
// what is not printable (control characters, so escape sequences too; line
// breaks; characters that reorder text or have no width; bytes that are no
// UTF-8) is shown as its code, such as \n, \x1b or \u202e.
func Escape(text string) string {
	clean := true
	for _, r := range text {
		if r == utf8.RuneError || !unicode.IsPrint(r) {
			clean = false
			break
		}
	}
	if clean {
		return text
	}
	var b strings.Builder
	for len(text) > 0 {
		r, size := utf8.DecodeRuneInString(text)
		switch {
		case r == utf8.RuneError && size == 1:
			fmt.Fprintf(&b, `\x%02x`, text[0])
		case r == '\n':
			b.WriteString(`\n`)
		case r == '\r':
			b.WriteString(`\r`)
		case r == '\t':
			b.WriteString(`\t`)
		case r == 0xA0: // no-break space, which designs may hold
			b.WriteByte(' ')
		case unicode.IsPrint(r):
			b.WriteRune(r)
		case r < 0x80:
			fmt.Fprintf(&b, `\x%02x`, r)
		case r <= 0xFFFF:
			fmt.Fprintf(&b, `\u%04x`, r)
		default:
			fmt.Fprintf(&b, `\U%08x`, r)
		}
		text = text[size:]
	}
	return b.String()
}

// columns counts the terminal columns that an escaped text takes: none for
// marks that combine with the letter before, two for East Asian wide letters.
func columns(text string) int {
	n := 0
	for _, r := range text {
		switch {
		case r < 0x300:
			n++
		case unicode.In(r, unicode.Mn, unicode.Me):
		case wide(r):
			n += 2
		default:
			n++
		}
	}
	return n
}

// wide reports the blocks that terminals draw two columns wide (the W and F
// classes of Unicode's annex 11, by block).
func wide(r rune) bool {
	switch {
	case r < 0x1100:
		return false
	case r <= 0x115F, r >= 0x2E80 && r <= 0xA4CF, r >= 0xAC00 && r <= 0xD7A3,
		r >= 0xF900 && r <= 0xFAFF, r >= 0xFE30 && r <= 0xFE6F, r >= 0xFF00 && r <= 0xFF60,
		r >= 0xFFE0 && r <= 0xFFE6, r >= 0x1F300 && r <= 0x1FAFF, r >= 0x20000 && r <= 0x3FFFD:
		return true
	}
	return false
}
