package source

import (
	"bytes"
	"fmt"
)

// bracket is one that is open. The braces of an object follow = or stand in a
// list or object; all others hold a block's body.
type bracket struct {
	at   int
	what bracketKind
}

type bracketKind byte

const (
	inBlock bracketKind = iota // also the top level
	inObject
	inList
)

// inside says what the innermost open bracket holds.
func (g *guard) inside() bracketKind {
	if len(g.open) == 0 {
		return inBlock
	}
	return g.open[len(g.open)-1].what
}

// block is the id of the top-level block that is open here, "" outside. What
// stands deeper belongs to it too; finer ids are the decoder's.
func (g *guard) block() string {
	if len(g.open) == 0 || len(g.keyword) == 0 || g.open[0].what != inBlock {
		return ""
	}
	keyword := string(g.keyword)
	if len(g.label) == 0 || len(g.label) > 64 || keyword == "design" {
		return keyword
	}
	for _, c := range g.label {
		if !isDigit(c) && !isLetter(c) && c != '-' && c != '.' {
			return keyword
		}
	}
	return keyword + "." + string(g.label)
}

// header notes the words before a top-level brace: keyword, then label.
func (g *guard) header(word []byte) {
	switch {
	case len(g.open) > 0:
	case len(g.keyword) == 0:
		g.keyword = word
	case len(g.label) == 0:
		g.label = word
	}
}

// opens and closes hold the depth and see that brackets pair.
func (g *guard) opens(c byte) {
	start := g.at
	g.at++
	if c == '[' && g.last != lastOpens {
		why := "a list stands after =, inside a list or inside an object"
		if g.last == lastValue {
			why = "a value cannot be indexed; " + why
		}
		g.report(Problem{Kind: kindExpression, Message: "found \"[\": " + why,
			Expected: "a list after =, [, comma or colon", Found: "["}, start, start+1)
	}
	what := inBlock
	switch {
	case c == '[':
		what = inList
	case g.last == lastOpens:
		what = inObject
	}
	g.open = append(g.open, bracket{start, what})
	if len(g.open) > MaxDepth && !g.tooDeep {
		g.tooDeep = true
		g.report(Problem{
			Kind:     kindSize,
			Message:  fmt.Sprintf("brackets are nested more than %d deep", MaxDepth),
			Expected: fmt.Sprintf("at most %d open brackets", MaxDepth),
			Found:    fmt.Sprintf("%c as number %d", c, len(g.open)),
		}, start, start+1)
		// Beyond this nothing in the file means what it seems to.
		g.stop = true
	}
	g.last = lastOpens
	if c == '{' {
		g.last = lastBrace
	}
	g.count(1, start)
}

// isBareHeader tells whether a line names a block, with labels or none, and does not
// open it; a comment may follow. It is asked of many lines, so it allocates nothing.
func isBareHeader(line []byte) bool {
	line = bytes.TrimRight(bytes.TrimLeft(line, " \t"), "\r")
	n := 0
	for n < len(line) && (isLetter(line[n]) || n > 0 && (isDigit(line[n]) || line[n] == '-')) {
		n++
	}
	if n == 0 {
		return false
	}
	for {
		rest := bytes.TrimLeft(line[n:], " \t")
		switch {
		case len(rest) == 0 || rest[0] == '#' || bytes.HasPrefix(rest, []byte("//")):
			return true
		case rest[0] != '"' || len(rest) == len(line[n:]):
			return false
		}
		label := bytes.IndexByte(rest[1:], '"')
		if label < 0 {
			return false
		}
		n = len(line) - len(rest) + label + 2
	}
}

// longestHeader is how long a line is looked at for one.
const longestHeader = 400

// lineEnds notes the first line of a body that names a block and opens none: where a
// brace further on closes nothing, that line is the likely cause.
func (g *guard) lineEnds() {
	if g.bare > 0 || g.last != lastValue || g.inside() != inBlock {
		return
	}
	line := g.text[max(0, g.at-longestHeader):g.at]
	line = line[bytes.LastIndexByte(line, '\n')+1:]
	if len(line) < longestHeader && isBareHeader(line) {
		g.bare = g.at - len(bytes.TrimLeft(line, " \t")) + 1
	}
}

func (g *guard) closes(c byte) {
	start := g.at
	g.at++
	g.count(1, start)
	g.last = lastValue
	if len(g.open) == 0 {
		if len(g.problems) > 0 {
			return
		}
		if c == '}' && g.bare > 0 {
			g.unpaired(Problem{
				Message:  "a block begins here without its \"{\", so that a \"}\" further on closes nothing",
				Expected: "{ at the end of the line",
				Found:    "the end of the line",
			}, g.bare-1)
			return
		}
		g.unpaired(Problem{
			Message:  fmt.Sprintf("found \"%c\", but nothing is open that it could close", c),
			Expected: "a block, an attribute or the end of the file",
			Found:    string(c),
		}, start)
		return
	}
	opening := g.open[len(g.open)-1].at
	if g.open = g.open[:len(g.open)-1]; len(g.open) == 0 {
		g.keyword, g.label = nil, nil
	}
	want := byte('}')
	if g.text[opening] == '[' {
		want = ']'
	}
	if c != want && len(g.problems) == 0 {
		g.unpaired(Problem{
			Message:  fmt.Sprintf("expected \"%c\" (for the \"%c\" of line %d), found \"%c\"", want, g.text[opening], g.file.Position(opening).Line, c),
			Expected: string(want),
			Found:    string(c),
		}, start)
	}
}

// unpaired reports a bracket only while the text is otherwise clean: what was
// skipped after an error may have held its partner.
func (g *guard) unpaired(p Problem, at int) {
	if len(g.problems) > 0 {
		return
	}
	p.Kind = kindSyntax
	g.report(p, at, at+1)
}

func (g *guard) finish() {
	if g.stop || len(g.open) == 0 {
		return
	}
	opening := g.open[len(g.open)-1].at
	want := "}"
	if g.text[opening] == '[' {
		want = "]"
	}
	g.unpaired(Problem{
		Message:  fmt.Sprintf("this \"%c\" is never closed: expected \"%s\", found the end of the file", g.text[opening], want),
		Expected: want,
		Found:    "end of file",
	}, opening)
}
