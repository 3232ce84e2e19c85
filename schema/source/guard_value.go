package source

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"
)

func isDigit(c byte) bool  { return '0' <= c && c <= '9' }
func isLetter(c byte) bool { return 'a' <= c && c <= 'z' || 'A' <= c && c <= 'Z' || c == '_' }

// shown shortens a piece of a text for a message. It may cut invalid UTF-8,
// which %q then writes out.
func shown(text []byte) string {
	const most = 40
	if len(text) > most {
		cut := most
		for cut > most-utf8.UTFMax && !utf8.RuneStart(text[cut]) {
			cut--
		}
		return string(text[:cut]) + "..."
	}
	return string(text)
}

// name takes a run of letters, digits, _ and -. All names of the language are
// ASCII: another script's letter among them can only be a slip or a trick.
func (g *guard) name() {
	start := g.at
	foreign := -1 // the first letter that is not ASCII
	for g.at < len(g.text) {
		c := g.text[g.at]
		if isLetter(c) || isDigit(c) || c == '-' {
			g.at++
			continue
		}
		if c < utf8.RuneSelf {
			break
		}
		r, size := utf8.DecodeRune(g.text[g.at:])
		if !unicode.IsLetter(r) && !unicode.IsMark(r) && !unicode.IsDigit(r) {
			break
		}
		if foreign < 0 {
			foreign = g.at
		}
		g.at += size
	}
	g.header(g.text[start:g.at])
	word := string(g.text[start:g.at])
	switch {
	case foreign >= 0 && !g.silent(kindCharacter, foreign):
		r, size := utf8.DecodeRune(g.text[foreign:])
		g.report(Problem{
			Kind:     kindCharacter,
			Message:  fmt.Sprintf("the name %q holds %s; names are written in the letters a to z, digits, _ and -", shown([]byte(word)), describe(r)),
			Expected: "ASCII letters, digits, _ and -",
			Found:    describe(r),
		}, foreign, foreign+size)
	case word == "for":
		g.expression("for", "a list or object is written out", start)
	case word == "null":
		g.report(Problem{
			Kind:     kindExpression,
			Message:  "found null: leave the attribute out where its value is not known",
			Expected: "a value, or no attribute",
			Found:    "null",
		}, start, g.at)
	}
	g.count(1, start)
	g.last = lastValue
}

// expression reports something that would have to be computed, from start to here.
func (g *guard) expression(found, instead string, start int) {
	if g.silent(kindExpression, start) {
		return
	}
	g.report(Problem{
		Kind:     kindExpression,
		Message:  fmt.Sprintf("found \"%s\": nothing is computed in these files; %s", found, instead),
		Expected: "a literal, a list or an object",
		Found:    found,
	}, start, g.at)
}

// number takes digits with at most one point between them, and refuses what
// else a number can look like.
func (g *guard) number() {
	start := g.at
	digits, points := 0, 0
	plain := true
	for g.at < len(g.text) {
		c := g.text[g.at]
		switch {
		case isDigit(c):
			digits++
			g.at++
			continue
		case c == '.':
			points++
			g.at++
			continue
		case isLetter(c):
			plain = false
			g.at++
			if (c == 'e' || c == 'E') && (g.peek(0) == '+' || g.peek(0) == '-') && isDigit(g.peek(1)) {
				g.at++
			}
			continue
		case c >= utf8.RuneSelf:
			if r, size := utf8.DecodeRune(g.text[g.at:]); unicode.IsLetter(r) || r == '°' {
				plain = false
				g.at += size
				continue
			}
		}
		break
	}
	g.count(1, start)
	g.last = lastNumber
	if g.silent(kindNumber, start) {
		return
	}
	word := g.text[start:g.at]
	refuse := func(expected, message string) {
		g.report(Problem{Kind: kindNumber, Message: message, Expected: expected, Found: shown(word)}, start, g.at)
	}
	switch {
	case !plain && exponent(word):
		refuse("a number without exponent", fmt.Sprintf("%s has an exponent: write the number out", shown(word)))
	case !plain:
		refuse("digits with at most one point",
			fmt.Sprintf("%s is no number; a value with a unit stands in quotes, as in \"5 V\"", shown(word)))
	case digits > MaxDigits:
		refuse(fmt.Sprintf("at most %d digits", MaxDigits),
			fmt.Sprintf("the number %s has %d digits; at most %d are read", shown(word), digits, MaxDigits))
	case points > 1 || word[len(word)-1] == '.':
		refuse("digits with at most one point between them", fmt.Sprintf("%s is no number", shown(word)))
	case len(word) > 1 && word[0] == '0' && word[1] != '.':
		refuse("a number without leading zeros", fmt.Sprintf("%s begins with a zero: write it without", shown(word)))
	case g.dateFollows(start):
		g.at += len("-05-02")
		refuse("a date in quotes", fmt.Sprintf("a date stands in quotes: \"%s\"", g.text[start:g.at]))
	case g.unitFollows():
		refuse("a quantity in quotes", fmt.Sprintf("after %s comes a unit; number and unit stand in quotes together, as in \"5 V\"", shown(word)))
	case g.peek(0) == ',' && isDigit(g.peek(1)) && g.inside() != inList:
		refuse("a decimal point", fmt.Sprintf("%s,%c: decimals stand after a point, as in 1.5", shown(word), g.peek(1)))
	}
}

// dateFollows looks for 2026-05-02 without quotes. It does not move.
func (g *guard) dateFollows(start int) bool {
	rest := g.text[g.at:]
	return g.at-start == 4 && len(rest) >= 6 &&
		rest[0] == '-' && isDigit(rest[1]) && isDigit(rest[2]) &&
		rest[3] == '-' && isDigit(rest[4]) && isDigit(rest[5])
}

// unitFollows looks for a unit after a number, on the same line and outside
// quotes. It does not move. A name that = follows is no unit but the next
// attribute, whose line end or comma is missing: that the parser reports.
func (g *guard) unitFollows() bool {
	const near = 16 // longer than any unit
	k := 0
	blanks := func() {
		for k < near && (g.peek(k) == ' ' || g.peek(k) == '\t') {
			k++
		}
	}
	blanks()
	if g.peek(k) == '%' || g.peek(k) >= utf8.RuneSelf {
		return true
	}
	if !isLetter(g.peek(k)) {
		return false
	}
	for k < near && (isLetter(g.peek(k)) || isDigit(g.peek(k)) || g.peek(k) == '/') {
		k++
	}
	blanks()
	c := g.peek(k)
	return k < near && (c == 0 || c == '\n' || c == '\r' || c == '#' || c == '}' || c == ',')
}

func exponent(word []byte) bool {
	s := strings.Map(func(r rune) rune {
		if r == '+' || r == '-' || '0' <= r && r <= '9' || r == '.' {
			return -1
		}
		return r
	}, string(word))
	return s == "e" || s == "E"
}

// mark takes the marks of the language and refuses every other ASCII character.
func (g *guard) mark(c byte) {
	start := g.at
	switch c {
	case '{', '[':
		g.opens(c)
		return
	case '}', ']':
		g.closes(c)
		return
	case '<':
		if g.peek(1) == '<' && (isLetter(g.peek(2)) || g.peek(2) == '-' && isLetter(g.peek(3))) {
			g.heredoc()
			return
		}
	case '-':
		if isDigit(g.peek(1)) && g.last == lastOpens {
			g.at++
			g.count(1, start)
			return
		}
	case ',', '=':
		if next := g.peek(1); c == ',' || next != '=' && next != '>' {
			g.at++
			g.count(1, start)
			g.last = lastOpens
			return
		}
	case ':':
		if g.peek(1) != ':' && g.inside() != inList {
			g.at++
			g.count(1, start)
			g.last = lastOpens
			if g.inside() == inBlock && !g.silent(kindExpression, start) {
				g.report(Problem{Kind: kindSyntax, Message: "expected \"=\", found \":\": an attribute is written name = value",
					Expected: "=", Found: ":"}, start, g.at)
			}
			return
		}
	}
	g.refuseMark(c)
}

// operators of two and three characters that the parser's lexer takes as one.
var longMarks = []string{"...", "==", "!=", "<=", ">=", "&&", "||", "=>", "::", "**", "~}"}

func (g *guard) refuseMark(c byte) {
	start := g.at
	found := string(c)
	for _, m := range longMarks {
		if strings.HasPrefix(string(g.text[g.at:min(len(g.text), g.at+3)]), m) {
			found = m
			break
		}
	}
	g.at += len(found)
	g.count(1, start)
	before := g.last
	g.last = lastValue
	switch c {
	case '(', ')':
		g.expression(found, "a value is written out, without parentheses or calls", start)
	case '?', ':':
		g.expression(found, "a value is written out, without conditions", start)
	case '.':
		switch {
		case found == "...":
			g.expression(found, "a list is written out", start)
		case isDigit(g.peek(0)) && before != lastValue:
			g.report(Problem{Kind: kindNumber, Message: "a number begins with a digit: write 0 before the point",
				Expected: "a digit", Found: "."}, start, g.at)
		default:
			g.expression(found, "a value is no reference to another one; an id stands in quotes, as in \"bank.house\"", start)
		}
	case '-':
		g.expression(found, "a minus sign stands directly before the digits of a number only", start)
	case '+', '*', '/', '%', '!', '&', '|', '^', '~', '<', '>', '=':
		g.expression(found, "a value is written out, without operators", start)
	default:
		g.strange(rune(c), start)
	}
}

// heredoc refuses a text between markers, and goes on behind it where it ends.
func (g *guard) heredoc() {
	start := g.at
	g.at += 2
	if g.peek(0) == '-' {
		g.at++
	}
	word := g.at
	for g.at < len(g.text) && (isLetter(g.text[g.at]) || isDigit(g.text[g.at]) || g.text[g.at] == '-') {
		g.at++
	}
	marker := string(g.text[word:g.at])
	g.report(Problem{
		Kind:     kindExpression,
		Message:  fmt.Sprintf("found <<%s: a text stands in quotes, on one line", shown([]byte(marker))),
		Expected: "a quoted string",
		Found:    "<<" + shown([]byte(marker)),
	}, start, g.at)
	g.last = lastValue
	for g.at < len(g.text) {
		g.skipLine()
		for g.at < len(g.text) && (g.text[g.at] == '\n' || g.text[g.at] == '\r') {
			g.at++
		}
		end := g.at
		for end < len(g.text) && g.text[end] != '\n' && g.text[end] != '\r' {
			end++
		}
		if strings.TrimSpace(string(g.text[g.at:end])) == marker {
			g.at = end
			return
		}
	}
	g.report(Problem{
		Kind:     kindSyntax,
		Message:  fmt.Sprintf("the text after <<%s is never closed: expected a line %s, found the end of the file", shown([]byte(marker)), shown([]byte(marker))),
		Expected: shown([]byte(marker)),
		Found:    "end of file",
	}, start, word)
}
