package report

import (
	"cmp"
	"fmt"
	"math"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"stringline/lint/verdict"
	"stringline/schema/source"
)

// placesShown is how many of a finding's places the text names; the JSON has
// them all.
const placesShown = 6

// findings are the verdicts that make items: by grade, and in a grade what
// breaks, then void rules, then what is unproven.
func findings(all []verdict.Verdict) []*verdict.Verdict {
	var found []*verdict.Verdict
	for i := range all {
		if all[i].Finding() {
			found = append(found, &all[i])
		}
	}
	order := func(v *verdict.Verdict) int {
		return slices.Index([]verdict.Outcome{verdict.Breaks, verdict.Void, verdict.Unproven}, v.Outcome)
	}
	slices.SortStableFunc(found, func(a, b *verdict.Verdict) int {
		return cmp.Or(cmp.Compare(a.Grade.Rank(), b.Grade.Rank()), cmp.Compare(order(a), order(b)))
	})
	return found
}

func gradeInk(g verdict.Grade) ink {
	switch g {
	case verdict.Stop:
		return inkStop
	case verdict.Fix:
		return inkFix
	}
	return plain
}

// item writes one entry of the deficiency list.
func (p *page) item(number int, v *verdict.Verdict) {
	mark := ""
	switch v.Outcome {
	case verdict.Unproven:
		mark = "UNPROVEN"
	case verdict.Void:
		mark = "VOID"
	}
	l := p.line().put(fmt.Sprintf("Item %d", number), plain).to(9).put(strings.ToUpper(string(v.Grade)), gradeInk(v.Grade))
	if p.narrow() {
		l.gap().put(mark, plain).end()
		p.line().to(p.labels()).put(subject(v), plain).end()
		p.line().to(p.labels()).put(v.Rule, plain).end()
		p.line().to(p.labels()).wrap(sentence(v), plain)
	} else {
		p.pair(l.to(p.values()), subject(v), v.Rule)
		p.line().put(mark, plain).to(p.values()).wrap(sentence(v), plain)
	}
	switch v.Outcome {
	case verdict.Void:
		p.void(v)
	default:
		p.compared(v)
	}
	if v.Accepted != nil { // and got worse, or it were no item
		p.label("accepted").wrap("on "+v.Accepted.Was.Since+", and worse now: "+v.Accepted.Worse, plain)
	}
	for _, words := range rests(v) {
		p.label("rests on").wrap(words, plain)
	}
	if v.Outcome == verdict.Unproven {
		for i, words := range supplies(v.Missing) {
			p.labelOnce("supply", i).wrap(words, inkSupply)
		}
	} else if v.Remedy != "" && v.Outcome == verdict.Breaks {
		p.label("remedy").wrap(v.Remedy, plain)
	}
	if len(v.At) > 0 {
		p.label("where").wrapPieces(places(v.At), " ", plain)
	}
}

// sentence is what a verdict says, with a capital letter and a full stop: rules
// give reasons as parts of a sentence.
func sentence(v *verdict.Verdict) string {
	text := cmp.Or(v.Message, v.Title)
	if text == "" {
		return ""
	}
	if last, _ := utf8.DecodeLastRuneInString(text); unicode.IsLetter(last) || unicode.IsDigit(last) || last == ')' {
		text += "."
	}
	first, size := utf8.DecodeRuneInString(text)
	return string(unicode.ToUpper(first)) + text[size:]
}

// subject names what a verdict is about.
func subject(v *verdict.Verdict) string {
	if v.Which == "" {
		return v.About
	}
	return v.About + ", " + v.Which
}

func (p *page) label(word string) *line {
	return p.line().to(p.labels()).put(word, plain).to(p.values())
}

// labelOnce is label for the first of several lines under one label.
func (p *page) labelOnce(word string, i int) *line {
	if i > 0 {
		return p.line().to(p.values())
	}
	return p.label(word)
}

func (p *page) void(v *verdict.Verdict) {
	if v.Fault == nil {
		return
	}
	p.label("fault").wrap(v.Fault.Message, plain)
	if v.Fault.At.Valid() {
		p.label("in rule").wrapPieces([]string{v.Fault.At.String()}, "  ", plain)
	}
}

// measure is one labelled value with its note.
type measure struct{ label, value, note string }

// compared writes what was found, what is allowed and the distance between.
func (p *page) compared(v *verdict.Verdict) {
	rows := measures(v)
	width := 0
	for _, r := range rows {
		if n := columns(Escape(r.value)); n <= 16 {
			width = max(width, n)
		}
	}
	for _, r := range rows {
		l := p.label(r.label)
		if r.label == "" {
			l = p.line().to(p.values())
		}
		l.right(p.values()+width, r.value, plain)
		if r.note == "" {
			l.end()
			continue
		}
		l.to(p.values() + width + 3)
		if p.width-l.at < 20 { // too narrow for a column of notes
			l.end()
			l = p.line().to(p.values())
		}
		l.wrap(r.note, plain)
	}
	if words := reason(v); words != "" {
		p.label("because").wrap(words, plain)
	}
}

// measures gives the rows of a comparison: found, allowed (or required), and
// by how much it is over or short.
func measures(v *verdict.Verdict) []measure {
	if v.Is == nil {
		return nil
	}
	found, foundNote := side(v.Is, v.Outcome)
	limits, notes := make([]string, len(v.Limits)), make([]string, len(v.Limits))
	for i := range v.Limits {
		limit := &v.Limits[i]
		limits[i], notes[i] = side(limit, v.Outcome)
		if limit.Value != nil && v.Is.Value != nil && limit.Unit == v.Is.Unit && limits[i] == found && v.Outcome == verdict.Breaks {
			found, limits[i] = apart(*v.Is.Value, *limit.Value, limit.Unit)
		}
	}
	rows := []measure{{"found", found, foundNote}}
	allowed := "allowed"
	switch v.Relation {
	case "at_least", "equals":
		allowed = "required"
	case "is_true": // what must be true says more than its parts' yes and no
		rows[0].note = cmp.Or(v.Is.Formula, v.Is.ID)
		if says := v.Is.Says; v.Is.Formula != "" && says != "" && says != v.Is.Formula {
			rows[0].note += ": " + says
		}
		rows = append(rows, measure{"required", "yes", ""})
	case "all_equal":
		allowed = "against"
	}
	if v.Relation == "between" && len(limits) == 2 {
		rows = append(rows, measure{"allowed", limits[0], join("or more", notes[0])},
			measure{"", limits[1], join("or less", notes[1])})
	} else {
		for i := range v.Limits {
			rows = append(rows, measure{allowed, limits[i], notes[i]})
			allowed = ""
		}
	}
	if v.Spare != nil && v.Outcome == verdict.Breaks {
		rows = append(rows, distance(v, found, limits))
	}
	for i := range v.Also {
		rows = append(rows, measure{"also", entry(&v.Also[i]), note(&v.Also[i])})
	}
	return rows
}

// side gives the value and the note of one side of a comparison. Of an unknown
// one it tells the bound that holds all the same: where the bound alone breaks
// the rule it stands in the value's place.
func side(m *verdict.Measured, outcome verdict.Outcome) (value, words string) {
	value, words = entry(m), note(m)
	if _, ok := known(m); ok || m.AtLeast == nil {
		return value, words
	}
	bound := show(*m.AtLeast, m.Unit)
	if outcome == verdict.Breaks {
		return bound, join("or more", words)
	}
	return value, join("at least "+bound+" from what is known", words)
}

func join(first, second string) string {
	if second == "" {
		return first
	}
	return first + "; " + second
}

// distance says how far past its limit a value is.
func distance(v *verdict.Verdict, found string, limits []string) measure {
	label := "over by"
	switch {
	case v.Relation == "at_least", v.Relation == "between" && below(v):
		label = "short by"
	case v.Relation == "equals", v.Relation == "all_equal":
		label = "off by"
	}
	row := measure{label: label}
	row.value = difference(math.Abs(v.Spare.Value), v.Spare.Unit, append([]string{found}, limits...)...)
	if v.Headroom != nil {
		row.note = percent(math.Abs(*v.Headroom))
	}
	return row
}

// below reports a value under the lower end of its range.
func below(v *verdict.Verdict) bool {
	return v.Is.Value != nil && len(v.Limits) == 2 && v.Limits[0].Value != nil && *v.Is.Value < *v.Limits[0].Value
}

// rests names what people set that this verdict rests on.
func rests(v *verdict.Verdict) []string {
	var words []string
	for _, parameter := range v.Parameters {
		text := strings.TrimSpace(parameter.Name + " " + parameter.Value)
		if parameter.SetAt.Valid() {
			text += ", set at " + parameter.SetAt.String()
		}
		words = append(words, text)
	}
	if v.BookGrade != "" && v.BookGrade != v.Grade {
		words = append(words, fmt.Sprintf("grade %s, set by the workshop; %s in its codebook", v.Grade, v.BookGrade))
	}
	return words
}

// places lists where a finding stands, each place once, the subject's header
// first, as pieces that a line may end between. Places in one file stand together:
// FILE:8:24, 12:24.
func places(at []source.Range) []string {
	var files [][]string       // the pieces of each file
	byFile := map[string]int{} // index in files
	seen := map[string]bool{}
	shown, more := 0, 0
	for _, r := range at {
		text := r.String()
		if text == "" || seen[text] {
			continue
		}
		seen[text] = true
		if shown == placesShown {
			more++
			continue
		}
		shown++
		if i, ok := byFile[r.File]; ok && r.Valid() {
			files[i][len(files[i])-1] += ","
			files[i] = append(files[i], fmt.Sprintf("%d:%d", r.Start.Line, r.Start.Column))
			continue
		}
		byFile[r.File] = len(files)
		files = append(files, []string{text})
	}
	if more > 0 {
		files = append(files, []string{fmt.Sprintf("and %d more", more)})
	}
	for i := 1; i < len(files); i++ {
		files[i][0] = " " + files[i][0] // two spaces between files
	}
	return slices.Concat(files...)
}
