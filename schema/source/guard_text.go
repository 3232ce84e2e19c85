package source

import (
	"bytes"
	"fmt"
	"strconv"
	"unicode"
	"unicode/utf8"
)

// notText recognizes what is no UTF-8 text at all, so that a picture or a
// UTF-16 file gets one clear sentence.
func notText(f *File) *Problem {
	text := f.Text[:min(len(f.Text), 8192)]
	refuse := func(at int, found, message string) *Problem {
		return &Problem{Kind: kindEncoding, Message: message, Expected: "UTF-8 text", Found: found, At: f.Range(at, at)}
	}
	switch {
	case bytes.HasPrefix(text, []byte{0xFF, 0xFE, 0, 0}), bytes.HasPrefix(text, []byte{0, 0, 0xFE, 0xFF}):
		return refuse(0, "UTF-32", "the file is UTF-32 (it begins with that byte order mark); save it as UTF-8")
	case bytes.HasPrefix(text, []byte{0xFF, 0xFE}), bytes.HasPrefix(text, []byte{0xFE, 0xFF}):
		return refuse(0, "UTF-16", "the file is UTF-16 (it begins with that byte order mark); save it as UTF-8")
	}
	var zero [2]int // at even and at odd places
	strange, first := 0, -1
	for i := 0; i < len(text); i++ {
		c := text[i]
		if c == 0 {
			zero[i%2]++
		}
		if c < 0x20 && c != '\t' && c != '\n' && c != '\r' || c == 0x7F {
			strange++
			if first < 0 {
				first = i
			}
		}
	}
	// ASCII in UTF-16 has a NUL in every second place and nowhere else.
	if few, many := min(zero[0], zero[1]), max(zero[0], zero[1]); many >= 4 && few*8 <= many && many*5 >= len(text)*2 {
		return refuse(first, "UTF-16", "the file looks like UTF-16 (every second byte is NUL); save it as UTF-8")
	}
	if strange >= 8 && strange*20 >= len(text) {
		return refuse(first, "binary data", fmt.Sprintf("the file is no text: it holds binary data (first byte 0x%02X)", text[first]))
	}
	return nil
}

func (g *guard) lineComment() {
	start := g.at
	for g.at < len(g.text) && g.text[g.at] != '\n' && g.text[g.at] != '\r' {
		g.rune(inComment)
	}
	g.count(1, start)
}

func (g *guard) blockComment() {
	start := g.at
	g.at += 2
	g.count(1, start)
	for g.at < len(g.text) && !g.stop {
		switch {
		case g.text[g.at] == '*' && g.peek(1) == '/':
			g.at += 2
			return
		case g.text[g.at] == '\r':
			g.carriageReturn()
		case g.atLineStart() && g.conflictMarker(false):
		default:
			g.rune(inComment)
		}
	}
	g.report(Problem{
		Kind:     kindSyntax,
		Message:  "this comment is never closed: expected */, found the end of the file",
		Expected: "*/",
		Found:    "end of file",
	}, start, start+2)
}

// quoted takes a string on one line.
func (g *guard) quoted() {
	start := g.at
	g.at++
	g.last = lastValue
	g.count(3, start) // the quotes and what is between them
	signs := 0
	for g.at < len(g.text) && !g.stop {
		switch c := g.text[g.at]; c {
		case '"':
			g.header(g.text[start+1 : g.at])
			g.at++
			return
		case '\n', '\r':
			g.unclosed(start, "end of line")
			return
		case '\\':
			g.escape()
		case '$', '%':
			g.count(2, g.at) // the lexer cuts the string here
			if g.peek(1) == '{' {
				from := g.at
				g.at += 2
				g.expression(string(c)+"{", "a string holds no template (not even one written as $${ or %%{)", from)
				g.skipLine()
				return
			}
			g.at++
			if signs++; signs == MaxSigns+1 {
				g.report(Problem{
					Kind:     kindSize,
					Message:  fmt.Sprintf("the string holds more than %d signs $ and %%", MaxSigns),
					Expected: fmt.Sprintf("at most %d signs $ and %% in a string", MaxSigns),
					Found:    "more",
				}, g.at-1, g.at)
			}
		default:
			g.rune(inString)
		}
	}
	g.unclosed(start, "end of file")
}

func (g *guard) unclosed(start int, found string) {
	g.report(Problem{
		Kind:     kindSyntax,
		Message:  fmt.Sprintf("this string is never closed: expected \", found the %s", found),
		Expected: "\"",
		Found:    found,
	}, start, start+1)
}

// escape takes a backslash in a string and what it stands for. An escaped
// character is refused where the character itself would be.
func (g *guard) escape() {
	start := g.at
	g.at++
	refuse := func(found string) {
		if g.silent(kindSyntax, start) {
			return
		}
		g.report(Problem{
			Kind:     kindSyntax,
			Message:  fmt.Sprintf("found %s in a string: after a backslash stands n, t, \", \\, u with 4 or U with 8 hexadecimal digits", found),
			Expected: `\n, \t, \", \\, \u and 4 or \U and 8 hexadecimal digits`,
			Found:    found,
		}, start, g.at)
	}
	length := 0
	switch g.peek(0) {
	case 'n', 't', '"', '\\':
		g.at++
		return
	case 'u':
		length = 4
	case 'U':
		length = 8
	case 0, '\n', '\r':
		refuse(`\`)
		return
	default:
		r, size := utf8.DecodeRune(g.text[g.at:])
		if c := g.text[g.at]; c < 0x20 || size == 1 && c >= utf8.RuneSelf {
			refuse(`\`) // and the character itself is read next, and refused for what it is
			return
		}
		g.at += size
		if found := `\` + string(r); unicode.IsPrint(r) {
			refuse(found)
		} else {
			refuse(`\` + describe(r))
		}
		return
	}
	g.at++
	digits := g.at
	for g.at < len(g.text) && g.at-digits < length && isHex(g.text[g.at]) {
		g.at++
	}
	written := string(g.text[start:g.at])
	code, err := strconv.ParseUint(string(g.text[digits:g.at]), 16, 32)
	if err != nil || g.at-digits != length {
		refuse(written)
		return
	}
	if code > unicode.MaxRune || !utf8.ValidRune(rune(code)) {
		g.report(Problem{
			Kind:     kindCharacter,
			Message:  fmt.Sprintf("%s is no character", written),
			Expected: "a Unicode code point",
			Found:    written,
		}, start, g.at)
		return
	}
	before := rune(0)
	if b, _ := utf8.DecodeLastRune(g.text[:start]); b != utf8.RuneError {
		before = b
	}
	if why := unwelcome(rune(code), before, inString); why != "" && rune(code) != '\n' && rune(code) != '\t' {
		g.character(rune(code), written, why, start)
	}
}

func isHex(c byte) bool {
	return isDigit(c) || 'a' <= c && c <= 'f' || 'A' <= c && c <= 'F'
}

// where says in what a character stands.
type where uint8

const (
	inString where = iota
	inComment
)

// rune takes one character of a string or comment.
func (g *guard) rune(in where) {
	start := g.at
	c := g.text[g.at]
	if c >= 0x20 && c < 0x7F || c == '\t' || in == inComment && c == '\n' {
		g.at++
		return
	}
	r, size := utf8.DecodeRune(g.text[g.at:])
	if r == utf8.RuneError && size == 1 {
		g.invalidByte()
		return
	}
	before, _ := utf8.DecodeLastRune(g.text[:start])
	g.at += size
	if why := unwelcome(r, before, in); why != "" {
		g.character(r, describe(r), why, start)
	}
}

func (g *guard) invalidByte() {
	start := g.at
	c := g.text[g.at]
	for g.at < len(g.text) && g.text[g.at] >= utf8.RuneSelf {
		if r, size := utf8.DecodeRune(g.text[g.at:]); r != utf8.RuneError || size > 1 {
			break
		}
		g.at++
	}
	if g.silent(kindEncoding, start) {
		return
	}
	g.report(Problem{
		Kind:     kindEncoding,
		Message:  fmt.Sprintf("the byte 0x%02X is not UTF-8; save the file as UTF-8", c),
		Expected: "UTF-8 text",
		Found:    fmt.Sprintf("byte 0x%02X", c),
	}, start, g.at)
}

func (g *guard) character(r rune, found, why string, start int) {
	if g.silent(kindCharacter, start) {
		return
	}
	g.report(Problem{
		Kind:     kindCharacter,
		Message:  fmt.Sprintf("found %s: %s", found, why),
		Expected: "text that reads as it is stored",
		Found:    fmt.Sprintf("U+%04X", r),
	}, start, g.at)
}

// unwelcome says why a character must not stand in a string or comment, "" if it may.
func unwelcome(r, before rune, in where) string {
	switch {
	case r == 0:
		return "a NUL ends a text for many programs; remove it"
	case unicode.Is(unicode.Bidi_Control, r):
		return "a bidirectional control character lets a text read differently from what it is; remove it"
	case r == 0x2028 || r == 0x2029 || r == 0x85:
		return "editors do not agree whether this ends the line; remove it"
	case unicode.IsControl(r):
		return "a control character is no text; remove it"
	case in == inComment:
		return ""
	case joins(r):
		// Persian, the scripts of India and emoji need joiners and variation
		// selectors; after a Latin letter or a digit they are only invisible.
		// One may follow the other only where an emoji is joined to the next.
		if before < utf8.RuneSelf || unicode.Is(unicode.Latin, before) ||
			invisible(before) && (before != 0xFE0F || r != 0x200D) {
			return "an invisible character makes two names that look alike; remove it"
		}
		return ""
	case invisible(r):
		return "an invisible character makes two names that look alike; remove it"
	}
	return ""
}

func joins(r rune) bool {
	return r == 0x200C || r == 0x200D || r >= 0xFE00 && r <= 0xFE0F
}

// invisible characters take no room: zero-width space, word joiner, byte order
// mark, soft hyphen, fillers, tags and variation selectors.
func invisible(r rune) bool {
	return r == 0x3164 || r == 0xFFA0 || unicode.Is(unicode.Cf, r) ||
		unicode.Is(unicode.Other_Default_Ignorable_Code_Point, r) || unicode.Is(unicode.Variation_Selector, r)
}

// beyondASCII takes a character that is not ASCII outside strings and comments.
func (g *guard) beyondASCII() {
	start := g.at
	r, size := utf8.DecodeRune(g.text[g.at:])
	switch {
	case r == utf8.RuneError && size == 1:
		g.invalidByte()
	case unicode.IsLetter(r):
		g.name()
	default:
		g.at += size
		g.strange(r, start)
	}
}

// strange refuses a character that has no meaning outside strings and comments.
func (g *guard) strange(r rune, start int) {
	if g.silent(kindCharacter, start) {
		return
	}
	why := "it stands in no place of the language outside quotes"
	switch r {
	case '\'', '`', '‘', '’', '“', '”', '„', '«', '»':
		why = `a text stands between straight double quotes, as in "5 V"`
	case ';':
		why = "attributes stand on lines of their own"
	case '\u2212', '\u2013', '\u2014':
		why = "write the minus sign -"
	case '\u00A0', '\u202F', '\u2007':
		why = "write an ordinary space"
	default:
		if s := unwelcome(r, 0, inString); s != "" {
			why = s
		}
	}
	g.report(Problem{
		Kind:     kindCharacter,
		Message:  fmt.Sprintf("found %s: %s", describe(r), why),
		Expected: "a name, a value or one of = [ ] { } , :",
		Found:    describe(r),
	}, start, g.at)
}

// describe names a character so that it can be told from its look-alikes. What
// cannot be seen, or would act on the screen, is named by number alone.
func describe(r rune) string {
	switch {
	case r < utf8.RuneSelf && unicode.IsPrint(r):
		return "\"" + string(r) + "\""
	case !unicode.IsPrint(r) || unicode.IsMark(r):
		return fmt.Sprintf("U+%04X", r)
	}
	for _, s := range []string{"Cyrillic", "Greek", "Armenian", "Cherokee", "Coptic"} {
		if unicode.Is(unicode.Scripts[s], r) {
			return fmt.Sprintf("the %s letter %c (U+%04X)", s, r, r)
		}
	}
	return fmt.Sprintf("%c (U+%04X)", r, r)
}
