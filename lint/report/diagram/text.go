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
// those of the widest sans-serif faces in common use, the wider of two (from
// memory), so that a text in any other face takes no more room than was kept for
// it.
func advance(r rune) float64 {
	switch {
	case r == 0xA0:
		return 0.37
	case unicode.In(r, unicode.Mn, unicode.Me):
		return 0
	case r >= 0x2E80 && r <= 0xA4CF, r >= 0xAC00 && r <= 0xD7A3, r >= 0xF900 && r <= 0xFAFF,
		r >= 0xFE30 && r <= 0xFE6F, r >= 0xFF00 && r <= 0xFF60, r >= 0x1F000:
		return 1.1
	case r >= 0x80:
		return 0.9
	case r >= 'a' && r <= 'z':
		return hundredths("61 63 55 63 62 37 63 63 29 36 61 29 98 63 62 63 63 44 53 40 63 60 82 60 60 53", r-'a')
	case r >= 'A' && r <= 'Z':
		return hundredths("69 69 70 78 64 58 78 76 43 46 70 56 87 75 79 61 79 70 69 62 74 69 99 69 62 69", r-'A')
	case r >= '0' && r <= '9':
		return 0.64
	case strings.ContainsRune(" .,:;'|!", r):
		return 0.37
	case strings.ContainsRune("/\\-()[]\"`", r):
		return 0.47
	case r == '%', r == '@':
		return 1.08
	}
	return 0.84
}

// hundredths reads the n-th of a row of two-figure numbers.
func hundredths(row string, n rune) float64 {
	return float64(row[3*n]-'0')/10 + float64(row[3*n+1]-'0')/100
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
