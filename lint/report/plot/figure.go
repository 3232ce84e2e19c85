package plot

import (
	"encoding/xml"
	"fmt"
	"strconv"
	"strings"

	"stringline/lint/facts"
	"stringline/lint/report"
	"stringline/schema/quantity"
)

// Measures of a picture, in its own units.
const (
	width = 360.0
	left  = 42.0 // of the axes' frame
	right = 350.0

	lineGap = 14.0

	lineLetters = 60 // that fit between the edges
)

// figure is one picture being drawn.
type figure struct {
	name  string
	alone bool
	title string
	words []string // what it shows, sentence by sentence
	heads []string // of the table that says the same
	rows  []Row
	b     strings.Builder
	y     float64 // how far down it is drawn
}

func newFigure(name string, alone bool) *figure {
	f := &figure{name: name, alone: alone, y: 4}
	return f
}

// called sets the title, which is seen only where no page says it.
func (f *figure) called(title string) {
	f.title = title
	if f.alone {
		for _, line := range wrap(title, 54) {
			f.y += 15
			f.text(6, f.y, "head", "start", line)
		}
		f.y += 4
	}
}

func (f *figure) say(format string, args ...any) {
	f.words = append(f.words, fmt.Sprintf(format, args...))
}

// svg closes the picture.
func (f *figure) svg() string {
	var b strings.Builder
	id := strings.ReplaceAll(f.name, ".", "-")
	height := num(f.y + 6)
	fmt.Fprintf(&b, `<svg xmlns="http://www.w3.org/2000/svg" class="plot" viewBox="0 0 %s %s" width="%s" height="%s" role="img" aria-labelledby="%s-title %s-desc" data-diagram="%s">`,
		num(width), height, num(width), height, id, id, escape(f.name))
	fmt.Fprintf(&b, "\n<title id=\"%s-title\">%s</title>\n<desc id=\"%s-desc\">%s</desc>\n", id, escape(f.title), id, escape(strings.Join(f.words, " ")))
	fmt.Fprintf(&b, `<defs><pattern id="%s-hatch" width="5" height="5" patternUnits="userSpaceOnUse" patternTransform="rotate(45)"><path class="hatch" d="M0 0V5"/></pattern></defs>`+"\n", id)
	if f.alone {
		fmt.Fprintf(&b, "<style>%s%s</style>\n<rect class=\"ground\" width=\"%s\" height=\"%s\"/>\n", Colors, Style, num(width), height)
	}
	b.WriteString(f.b.String())
	b.WriteString("</svg>\n")
	return b.String()
}

func (f *figure) hatch() string {
	return "url(#" + strings.ReplaceAll(f.name, ".", "-") + "-hatch)"
}

func (f *figure) put(format string, args ...any) {
	fmt.Fprintf(&f.b, format+"\n", args...)
}

// text puts words; anchor is start, middle or end.
func (f *figure) text(x, y float64, class, anchor, words string) {
	f.put(`<text class="%s" x="%s" y="%s" text-anchor="%s">%s</text>`, class, num(x), num(y), anchor, escape(report.Typeset(words)))
}

// paragraph puts words over as many lines as they need.
func (f *figure) paragraph(class, words string) {
	for _, line := range wrap(words, lineLetters) {
		f.y += lineGap
		f.text(6, f.y, class, "start", line)
	}
}

// supply says, in the place of what cannot be drawn, what would make it known.
func (f *figure) supply(what string, fact *facts.Fact) {
	words := what + ": _____ " + fact.Unit
	if fact.Says != "" {
		words += "; " + fact.Says
	}
	if needs := report.Supplies(fact.Missing); len(needs) > 0 {
		words += "; supply " + strings.Join(needs, "; ")
	}
	f.paragraph("supply", words)
	f.say("%s.", words)
}

// wrap breaks words into lines of at most so many letters; a word that is longer
// stays whole up to that length and is cut behind it.
func wrap(words string, most int) []string {
	var lines []string
	line := ""
	for _, word := range strings.Fields(report.Escape(words)) {
		for len([]rune(word)) > most {
			if line != "" {
				lines, line = append(lines, line), ""
			}
			letters := []rune(word)
			lines, word = append(lines, string(letters[:most])), string(letters[most:])
		}
		switch {
		case line == "":
			line = word
		case len([]rune(line))+1+len([]rune(word)) <= most:
			line += " " + word
		default:
			lines, line = append(lines, line), word
		}
	}
	if line != "" {
		lines = append(lines, line)
	}
	return lines
}

// escape makes a text safe inside an element or between quotes.
func escape(text string) string {
	var b strings.Builder
	// A strings.Builder takes everything.
	_ = xml.EscapeText(&b, []byte(report.Escape(text)))
	return b.String()
}

// num writes a coordinate, to a hundredth of a unit.
func num(v float64) string {
	text := strconv.FormatFloat(v, 'f', 2, 64)
	text = strings.TrimSuffix(strings.TrimRight(text, "0"), ".")
	if text == "-0" {
		return "0"
	}
	return text
}

// plain writes numbers as they stand beside a path: in a document's unit,
// rounded as machine output is.
func plain(list []float64, unit string) string {
	words := make([]string, len(list))
	for i, si := range list {
		words[i] = strconv.FormatFloat(facts.InUnit(si, unit), 'g', -1, 64)
	}
	return strings.Join(words, " ")
}

func show(si float64, unit string) string { return quantity.Format(si, unit) }

// known gives a fact's SI value; ok is false where there is none.
func known(s *facts.System, id string) (si float64, ok bool) {
	f, found := s.Fact(id)
	return f.SI, found && f.Known
}

// figures writes a fact as people read it, or its empty entry.
func figures(s *facts.System, id string) string {
	f, ok := s.Fact(id)
	if !ok {
		return "_____"
	}
	return report.Typeset(report.Value(&f))
}
