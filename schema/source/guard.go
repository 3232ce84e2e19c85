package source

import (
	"bytes"
	"fmt"
	"strings"
)

// The limits of one file. A text beyond one of them is refused, never cut.
const (
	MaxBytes    = 256 << 10 // bytes a file; a reader need not take in more than MaxBytes+1
	MaxTokens   = 100_000   // names, strings, numbers, marks, comments and line ends
	MaxDepth    = 20        // brackets open at once
	MaxDigits   = 30        // digits of a number
	MaxSigns    = 100       // signs $ and % in one string: HCL's parser copies the string at each
	MaxProblems = 100       // problems listed of a file
)

// The kinds of problem that the guard reports.
const (
	kindSize       = "size"       // the file, its tokens, its depth, the digits of a number
	kindEncoding   = "encoding"   // not UTF-8, not text
	kindCharacter  = "character"  // a character that hides, reverses or imitates text
	kindConflict   = "conflict"   // an unresolved merge
	kindSyntax     = "syntax"     // not closed, not in its place
	kindNumber     = "number"     // not digits with at most one point
	kindExpression = "expression" // something that would have to be computed
)

// Guard reads a text once, before any parser sees it, and reports everything
// that must not get in. No problems means that the text is safe to parse.
//
// It stands before the parser because the parser recurses on brackets and on
// chains of operators, and its lexer takes seconds and hundreds of megabytes on
// some texts. So the guard is one loop over the bytes: it calls nothing that
// calls back, keeps at most [MaxDepth] places, and never looks at a byte more
// than a fixed number of times.
//
// What it lets through is the language used as data: names of ASCII letters,
// quoted strings without templates, plain numbers, one minus sign before a
// number, = [ ] { } , and the colon between braces, comments and line ends. It
// knows no grammar beyond that: the parser says what stands in a wrong place.
//
// One line gives at most one problem of a kind, and a file at most
// [MaxProblems]; where there are more, the last one says so.
func Guard(f *File) Problems {
	if len(f.Text) > MaxBytes {
		return Problems{{
			Kind:     kindSize,
			Message:  fmt.Sprintf("the file has %d bytes; at most %d (256 KiB) are read", len(f.Text), MaxBytes),
			Expected: fmt.Sprintf("at most %d bytes", MaxBytes),
			Found:    fmt.Sprintf("%d bytes", len(f.Text)),
			At:       f.Range(0, 0),
		}}
	}
	if p := notText(f); p != nil {
		return Problems{*p}
	}
	problems, _ := scan(f)
	return problems
}

// scan is the one pass. It also gives the tokens that it counted.
func scan(f *File) (Problems, int) {
	g := &guard{file: f, text: f.Text, told: map[string]int{}}
	if bytes.HasPrefix(g.text, []byte(byteOrderMark)) {
		g.at = len(byteOrderMark)
	}
	for g.at < len(g.text) && !g.stop {
		g.token()
	}
	g.finish()
	return g.problems, g.tokens
}

// guard is the state of the one pass.
type guard struct {
	file     *File
	text     []byte
	at       int // the next byte
	tokens   int // as the parser's lexer would count them, or a few more
	last     lastToken
	open     []bracket
	keyword  []byte // of the top-level block that is being read, and its label
	label    []byte
	bare     int  // after the first byte of the first line that names a block and opens none
	loneCR   bool // a lone carriage return was reported
	tooDeep  bool
	problems Problems
	told     map[string]int // by kind: the end of the line that has a problem of it
	stop     bool
}

// lastToken is the kind of the last token that is no comment and no line end.
type lastToken byte

const (
	lastNone  lastToken = iota
	lastValue           // a name, string, number or closing bracket: what a value can end with
	lastNumber
	lastOpens // = [ , : what a value can follow
	lastBrace // {
)

// silent tells that report would drop a problem. Callers ask it before they
// word one, so that a line of a million errors costs no million sentences.
func (g *guard) silent(kind string, start int) bool {
	return g.stop || start < g.told[kind]
}

// report notes a problem, unless the line already has one of its kind.
func (g *guard) report(p Problem, start, end int) {
	if g.silent(p.Kind, start) {
		return
	}
	p.At = g.file.Range(start, end)
	p.Block = g.block()
	g.told[p.Kind] = max(start+1, g.file.lineEnd(p.At.Start.Line-1))
	if len(g.problems) == MaxProblems-1 {
		p.Message += fmt.Sprintf(" (the file has more than %d problems; the rest is not listed)", MaxProblems-1)
		g.stop = true
	}
	g.problems = append(g.problems, p)
}

func (g *guard) count(tokens, at int) {
	g.tokens += tokens
	if g.tokens > MaxTokens && !g.stop {
		g.report(Problem{
			Kind:     kindSize,
			Message:  fmt.Sprintf("the file has more than %d tokens (names, values, marks and line ends)", MaxTokens),
			Expected: fmt.Sprintf("at most %d tokens", MaxTokens),
			Found:    "more",
		}, at, at)
		g.stop = true
	}
}

// peek gives the byte k places on, 0 beyond the end.
func (g *guard) peek(k int) byte {
	if g.at+k < len(g.text) {
		return g.text[g.at+k]
	}
	return 0
}

// skipLine leaves the rest of a line unread: what follows an error there would
// only be reported once more in other words.
func (g *guard) skipLine() {
	for g.at < len(g.text) && g.text[g.at] != '\n' && g.text[g.at] != '\r' {
		g.at++
	}
}

func (g *guard) atLineStart() bool {
	if g.at == 0 {
		return true
	}
	before := g.text[g.at-1]
	return before == '\n' || before == '\r' || g.at == len(byteOrderMark) && string(g.text[:g.at]) == byteOrderMark
}

// token reads one token, comment, line end or run of blanks, and always moves on.
func (g *guard) token() {
	c := g.text[g.at]
	switch {
	case c == ' ' || c == '\t':
		g.at++
		return
	case c == '\n':
		g.lineEnds()
		g.at++
		g.count(1, g.at-1)
		if len(g.open) == 0 {
			g.keyword, g.label = nil, nil
		}
		return
	case c == '\r':
		g.carriageReturn()
		return
	}
	if g.atLineStart() && g.conflictMarker(true) {
		return
	}
	switch {
	case c == '#' || c == '/' && g.peek(1) == '/':
		g.lineComment()
	case c == '/' && g.peek(1) == '*':
		g.blockComment()
	case c == '"':
		g.quoted()
	case isDigit(c):
		g.number()
	case isLetter(c):
		g.name()
	case c >= 0x80:
		g.beyondASCII()
	default:
		g.mark(c)
	}
}

// carriageReturn takes CRLF, and a lone CR as the line end that its author meant.
func (g *guard) carriageReturn() {
	start := g.at
	g.at++
	if g.peek(0) == '\n' {
		return // the LF is the line end
	}
	g.count(1, start)
	if g.loneCR {
		return
	}
	g.loneCR = true
	g.report(Problem{
		Kind:     kindEncoding,
		Message:  "a line ends with a carriage return (CR) alone; save the file with LF or CRLF line ends",
		Expected: "LF or CRLF",
		Found:    "CR",
	}, start, start+1)
}

// conflictMarker takes a line that a merge left behind. Inside a block comment
// a row of = is a rule that somebody drew.
func (g *guard) conflictMarker(outside bool) bool {
	c := g.text[g.at]
	if c != '<' && c != '>' && (!outside || c != '=' && c != '|') {
		return false
	}
	n := 1
	for g.peek(n) == c {
		n++
	}
	// Seven is the usual width; wider ones can be configured. Walking the run
	// again as operators costs nothing more than once a byte.
	if after := g.peek(n); n < 7 || after != ' ' && after != '\n' && after != '\r' && g.at+n != len(g.text) {
		return false
	}
	marker := strings.Repeat(string(c), n)
	start := g.at
	g.skipLine()
	if n > 20 {
		marker = marker[:20] + "..."
	}
	g.report(Problem{
		Kind:     kindConflict,
		Message:  fmt.Sprintf("unresolved merge conflict: the line begins with the merge-conflict marker %s; choose one side and remove the markers", marker),
		Expected: "a file without merge-conflict markers",
		Found:    marker,
	}, start, g.at)
	return true
}
