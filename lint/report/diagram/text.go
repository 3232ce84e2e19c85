package diagram

import (
	"strings"
	"unicode"
)

// Sizes of letters, in units of the drawing. One unit is one pixel where the
// drawing is shown at its own width.
const (
	letter     = 11.0 // height of the letters
	lineHeight = 14.0
	boldWider  = 1.12 // how much wider bold letters are
)

// tie is the space between a number and its unit: no line is broken there. It is
// written as a plain space.
const tie = "\u00a0"

// tied makes a quantity of one piece.
func tied(quantity string) string { return strings.ReplaceAll(quantity, " ", tie) }

// advance tells how wide a letter is, as a share of its height. The figures are
// those of the widest sans-serif faces in common use (rounded up, from memory),
// so that a text in any other face takes no more room than was kept for it.
func advance(r rune) float64 {
	switch {
	case unicode.In(r, unicode.Mn, unicode.Me):
		return 0
	case r >= 0x2E80 && r <= 0xA4CF, r >= 0xAC00 && r <= 0xD7A3, r >= 0xF900 && r <= 0xFAFF,
		r >= 0xFE30 && r <= 0xFE6F, r >= 0xFF00 && r <= 0xFF60, r >= 0x1F000:
		return 1.1
	case r == 0xA0:
		return 0.42
	case r >= 0x80:
		return 0.85
	case strings.ContainsRune("il|j'!I", r):
		return 0.34
	case strings.ContainsRune(" .,:;/\\-()[]frt\"`", r):
		return 0.42
	case strings.ContainsRune("mwMW%@", r):
		return 1.0
	case strings.ContainsRune("=+<>~#&^", r):
		return 0.84
	case unicode.IsUpper(r):
		return 0.79
	}
	return 0.64
}

// width tells how much room a text takes at most.
func width(text string, bold bool) float64 {
	sum := 0.0
	for _, r := range text {
		sum += advance(r)
	}
	if bold {
		sum *= boldWider
	}
	return sum * letter
}

// shorten cuts the middle out of a text that does not fit, so that names which
// differ at either end stay apart.
func shorten(text string, room float64, bold bool) string {
	if width(text, bold) <= room {
		return text
	}
	letters := []rune(text)
	for keep := len(letters) - 1; keep > 2; keep-- {
		head := (keep + 1) / 2
		short := string(letters[:head]) + "…" + string(letters[len(letters)-(keep-head):])
		if width(short, bold) <= room {
			return short
		}
	}
	return "…"
}

// wrap breaks a text between words into lines that fit; a word that does not
// fit by itself is shortened.
func wrap(text string, room float64, bold bool) []string {
	var lines []string
	line := ""
	for _, word := range strings.Split(text, " ") {
		if word == "" {
			continue
		}
		word = shorten(word, room, bold)
		switch {
		case line == "":
			line = word
		case width(line+" "+word, bold) <= room:
			line += " " + word
		default:
			lines = append(lines, line)
			line = word
		}
	}
	if line != "" {
		lines = append(lines, line)
	}
	return lines
}
