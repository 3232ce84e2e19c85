package report

import (
	"slices"
	"strings"

	"stringline/lint"
	"stringline/lint/commission"
	"stringline/lint/facts"
	"stringline/lint/verdict"
	"stringline/schema/source"
)

// What the pictures and the sheet share with the texts: the same words, figures
// and order, so that two outputs of one run never tell different things.

// Summary says in one sentence what to make of a design, and the worst grade of
// what stands against it ("" for nothing worse than a point of advice). problems
// are those of no one design: they may have kept rules from judging.
func Summary(d *lint.DesignResult, problems source.Problems) (sentence string, worst verdict.Grade) {
	t := tallyOf(d)
	t.halved = halved(problems)
	text, with := t.verdictLine()
	switch with {
	case inkStop:
		worst = verdict.Stop
	case inkFix:
		worst = verdict.Fix
	}
	return text, worst
}

// Caution is what stands on everything that a person may act on.
const Caution = "T" + caution

const caution = "hese figures support, and do not replace, the code in force, the makers' manuals " +
	"and a licensed person. Arrays and batteries stay live."

// Counts says in one sentence what a run did.
func Counts(s *lint.Summary) string { return countWords(s) }

// Findings gives the verdicts that count against a design: by grade, and in a
// grade what breaks, then void rules, then what is unproven.
func Findings(d *lint.DesignResult) []*verdict.Verdict { return findings(d.Verdicts) }

// Sentence is what a verdict says, as a sentence.
func Sentence(v *verdict.Verdict) string { return sentence(v) }

// Subject names what a verdict is about.
func Subject(v *verdict.Verdict) string { return subject(v) }

// Measure is one labelled value of a comparison with its note: found, allowed,
// over by. A label that is empty goes on with the one above.
type Measure struct{ Label, Value, Note string }

// Measures gives the rows of a verdict's comparison.
func Measures(v *verdict.Verdict) []Measure {
	var all []Measure
	for _, m := range measures(v) {
		all = append(all, Measure{m.label, m.value, m.note})
	}
	return all
}

// Rests names what people set that a verdict rests on.
func Rests(v *verdict.Verdict) []string { return rests(v) }

// Places lists where a verdict stands, file by file.
func Places(at []source.Range) string { return strings.Join(places(at), " ") }

// Supplies says what to supply for missing attributes, one entry a subject.
func Supplies(missing []string) []string { return supplies(missing) }

// Reason is why a verdict is as it is, where its sentence and its measured values
// do not say that already; else empty.
func Reason(v *verdict.Verdict) string { return reason(v) }

// Assumptions lists what a design's judgements assumed, with values.
func Assumptions(d *lint.DesignResult) []string { return assumptions(d) }

// LimitRow is one row of the table of headroom.
type LimitRow struct {
	Subject, What        string
	Found, Allowed, Left string
	// Used is the share of the limit that is used up, 1 at the limit; holds
	// where Measured.
	Used                       float64
	Measured, Unproven, Broken bool
}

// LimitRows gives every verdict that has a limit in numbers, least headroom first.
func LimitRows(d *lint.DesignResult) []LimitRow {
	var all []LimitRow
	for _, r := range limitRows(d.Verdicts) {
		all = append(all, LimitRow{r.subject, r.what, r.found, r.allowed, r.left, 1 - r.headroom, r.measured, r.unproven, r.broken})
	}
	return all
}

// WorkLine is one numbered line of a worksheet.
type WorkLine struct {
	Number  int
	Fact    string // its id
	Value   string // or its empty entry
	Known   bool
	Formula string // with the numbers of the lines that it is made of
	Says    string // the same with figures
	Note    string
	Origin  string
	Source  string // of the method; empty for attributes
	Inputs  []int  // numbers of the lines that it is made of
}

// WorkLines numbers the workings of facts: what a line is made of stands above
// it. An id that is no fact of the design is left out. The map gives the number
// of each fact's line.
func WorkLines(s *facts.System, ids ...string) ([]WorkLine, map[string]int) {
	var roots []*facts.Work
	for _, id := range ids {
		if w, ok := s.Work(id); ok {
			roots = append(roots, w)
		}
	}
	lines := worksheetOf(roots...)
	all, numbers := make([]WorkLine, len(lines)), make(map[string]int, len(lines))
	for i := range lines {
		l := &lines[i]
		f := &l.work.Fact
		out := WorkLine{
			Number: l.number, Fact: f.ID, Value: factEntry(f, l.work.Entry.Attribute), Known: f.Known,
			Formula: refer(l, lines), Note: l.work.Note, Origin: origin(l), Inputs: l.inputs,
		}
		if !l.work.Entry.Attribute {
			out.Says, out.Source = f.Says, l.work.Entry.Source
		}
		if f.AtLeast != nil {
			out.Note = join("at least "+showSI(*f.AtLeast, f.Unit)+" from what is known", out.Note)
		}
		if out.Note == out.Says {
			out.Note = ""
		}
		all[i], numbers[f.ID] = out, l.number
	}
	return all, numbers
}

// Mentioned gives the ids of the facts that a verdict's sides are, or are
// formulas of.
func Mentioned(s *facts.System, v *verdict.Verdict) []string {
	var ids []string
	add := func(m *verdict.Measured) {
		text := m.ID
		if text == "" {
			text = m.Formula
		}
		for word := range strings.FieldsFuncSeq(text, func(r rune) bool { return r != '-' && (r >= 0x80 || !nameByte(byte(r))) }) {
			word = strings.Trim(word, ".-")
			if _, ok := s.Work(word); ok && !slices.Contains(ids, word) {
				ids = append(ids, word)
			}
		}
	}
	if v.Is != nil {
		add(v.Is)
	}
	for i := range v.Limits {
		add(&v.Limits[i])
	}
	for i := range v.Also {
		add(&v.Also[i])
	}
	return ids
}

// Value writes a fact's value as people read it, or its empty entry.
func Value(f *facts.Fact) string {
	if f.Known {
		return factValue(f)
	}
	return empty(f.Unit)
}

// typesetter writes units with the signs that paper has and terminals may lack.
var typesetter = strings.NewReplacer("degC", "°C", "mm2", "mm²", "W/m2", "W/m²", "kWh/m2", "kWh/m²", "ohm/m", "Ω/m", " ohm", " Ω")

// Typeset gives a text of the program's own with units in the signs that print
// has: °C for degC, mm² for mm2. Texts from a design are left as they are.
func Typeset(text string) string { return typesetter.Replace(text) }

// Show writes a number that is in a document's unit as people read it.
func Show(value float64, unit string) string { return show(value, unit) }

// Empty is the empty entry of a unit.
func Empty(unit string) string { return empty(unit) }

// Percent writes a share as a percentage.
func Percent(share float64) string { return percent(share) }

// ExpectedWords gives an expected value of a commissioning plan with its name and
// band, or its empty entry.
func ExpectedWords(e *commission.Expected) string {
	text := e.Name + " " + expectedValue(e)
	switch {
	case e.Relation == commission.Between && e.Low != nil && e.High != nil:
		text += " (" + show(*e.Low, e.Unit) + " to " + show(*e.High, e.Unit) + ")"
	default:
		text += strings.TrimPrefix(bounds(e.Relation), ",")
	}
	return text
}

// ExpectedSupply says what would make an expected value known; empty where it
// is, and for an entry that no file can fill.
func ExpectedSupply(e *commission.Expected) []string {
	if e.Known() || e.ID == "" {
		return nil
	}
	return unknownSupplies(e)
}

// ReadingWords gives a recorded reading with what was made of it.
func ReadingWords(r *commission.Reading) string { return readingValue(r) + ": " + readingNote(r) }

// SetWords gives a value that is to be programmed, or its empty entry.
func SetWords(e *commission.Expected) string { return expectedValue(e) + bounds(e.Relation) }

// MomentWords says how to give what is needed to tell what meters should show;
// empty where nothing is.
func MomentWords(missing []string) []string { return conditionWords(missing) }
