package report

import (
	"fmt"
	"io"
	"strconv"
	"strings"

	"stringline/lint/commission"
	"stringline/lint/facts"
)

// Commission writes a plan of commissioning for people: what stands against it,
// the cautions, then section by section what is done, what is due and what was
// measured, with a box for everything that was not. What is wrong comes first.
func Commission(w io.Writer, plan *commission.Plan, opts Page) error {
	p := newPage(opts)
	name := strings.ToUpper(plan.Head.Design)
	if plan.Head.Revision != "" {
		name += ", revision " + plan.Head.Revision
	}
	p.pair(p.line(), name, plan.Head.File)
	p.line().put("COMMISSIONING", plain).end()
	p.standing(&plan.Standing)
	p.line().wrap(readingsWords(plan), plain)
	p.outOfBand(plan)
	p.openFindings(&plan.Standing)
	p.blank()
	p.conditions(&plan.Now)
	p.commissionHead(&plan.Head)
	if len(plan.Hazards) > 0 {
		p.blank()
	}
	for i, text := range plan.Hazards {
		p.footOnce("Hazards", i, text, inkStop, plain)
	}
	p.blanks("TO BE NOTED", append(append([]commission.Blank{}, plan.Head.Blanks...), plan.Head.Serials...))
	for i := range plan.Sections {
		p.section(i+1, &plan.Sections[i])
	}
	p.meterTables(plan)
	p.blanks("TO BE SIGNED", plan.Signatures)
	p.blank()
	text := plan.Standing.Says
	if !plan.Standing.Energize {
		p.line().wrap(shout(text), inkStop)
	} else {
		p.line().wrap(text, plain)
	}
	p.caution()
	return p.flush(w)
}

// shout writes what stops everything as the check does.
func shout(text string) string {
	return strings.Replace(text, "Not to be energized:", "NOT TO BE ENERGIZED:", 1)
}

func (p *page) standing(st *commission.Standing) {
	with := plain
	switch {
	case !st.Energize:
		with = inkStop
	case len(st.Findings) > 0:
		with = inkFix
	}
	p.line().wrap(shout(st.Says), with)
	if !st.Energize {
		p.line().wrap("What is below may be looked at and measured dead. Nothing is connected before the stops are put right.", inkStop)
	}
	if len(st.Problems) > 0 {
		p.blank()
		p.errors(st.Problems)
		p.blank()
	}
}

// readingsWords counts the readings in a sentence.
func readingsWords(plan *commission.Plan) string {
	s := &plan.Summary
	text := fmt.Sprintf("%s recorded in the design: %d in band, %d outside, %d waived, %d unproven. %s due, %d not measured.",
		count(s.Recorded, "reading", "readings"), s.InBand, s.OutOfBand, s.Waived, s.Unproven, count(s.Due, "reading", "readings"), s.Remain)
	if s.Apart > 0 {
		text += fmt.Sprintf(" %s that should agree do not.", count(s.Apart, "set of readings", "sets of readings"))
	}
	return text
}

// outOfBand lists the lines that a recorded reading speaks against.
func (p *page) outOfBand(plan *commission.Plan) {
	for _, mark := range []struct {
		state, words string
		with         ink
	}{{commission.OutOfBand, "OUTSIDE ITS BAND", inkFix}, {commission.Unproven, "UNPROVEN", inkSupply}} {
		for i := range plan.Sections {
			for j := range plan.Sections[i].Lines {
				l := &plan.Sections[i].Lines[j]
				if l.State != mark.state {
					continue
				}
				p.blank()
				p.lineHead(l, "")
				p.line().to(p.labels()).put(mark.words, mark.with).end()
				p.line().to(p.labels()).wrap(l.Because, plain)
				p.culprits(l)
			}
		}
	}
}

// culprits says of the readings that make a line what it is what to supply, and
// where they stand.
func (p *page) culprits(l *commission.Line) {
	for _, r := range l.Readings {
		if r.State != l.State {
			continue
		}
		for _, words := range supplies(r.Missing) {
			p.label("supply").wrap(words, inkSupply)
		}
		if r.At.Valid() {
			p.label("where").wrapPieces([]string{r.At.String()}, " ", plain)
		}
	}
}

// openFindings names what the check found, so that nobody connects past it.
func (p *page) openFindings(st *commission.Standing) {
	if len(st.Findings) == 0 {
		return
	}
	p.blank()
	p.line().put("OPEN FINDINGS of the check, worst first", plain).end()
	for _, f := range st.Findings {
		about := f.About
		if f.Which != "" {
			about += ", " + f.Which
		}
		with := plain
		switch f.Grade {
		case "stop":
			with = inkStop
		case "fix":
			with = inkFix
		}
		l := p.line().put(strings.ToUpper(f.Grade), with).to(9)
		text := fmt.Sprintf("%s on %s: %s", f.Rule, about, f.Says)
		if f.Verdict != "breaks" {
			text = fmt.Sprintf("%s on %s, %s: %s", f.Rule, about, f.Verdict, f.Says)
		}
		l.wrap(text, plain)
	}
}

// conditions says what the expected readings are given for.
func (p *page) conditions(n *commission.Now) {
	var given []string
	if n.CellTemperature != nil {
		given = append(given, "cells at "+show(*n.CellTemperature, "degC"))
	}
	if n.Irradiance != nil {
		given = append(given, show(*n.Irradiance, "W/m2")+" in the plane of the array")
	}
	if len(given) > 0 {
		p.foot("Now", strings.Join(given, ", "), plain)
	}
	if len(n.Missing) > 0 {
		p.foot("Supply", strings.Join(conditionWords(n.Missing), "; "), inkSupply)
		p.foot("", "Until then what is due in light is an empty entry; the tables at the end say what to expect.", plain)
	}
	if n.Note != "" {
		p.foot("Note", n.Note, inkFix)
	}
}

// conditionWords says how to give what is missing.
func conditionWords(missing []string) []string {
	var words []string
	for _, id := range missing {
		if id == facts.NowCell {
			words = append(words, "the cells' temperature, as --cell-temperature 41degC")
		} else {
			words = append(words, "the irradiance in the plane of the array, as --irradiance 820W/m2")
		}
	}
	return words
}

// meterWords says what to supply, conditions of the moment by the option that
// takes them.
func meterWords(missing []string) []string {
	var words, rest []string
	for _, id := range missing {
		switch id {
		case facts.NowCell:
			words = append(words, "the cells' temperature (--cell-temperature)")
		case facts.NowIrradiance:
			words = append(words, "the irradiance (--irradiance)")
		default:
			rest = append(rest, id)
		}
	}
	return append(words, supplies(rest)...)
}

func (p *page) commissionHead(h *commission.Head) {
	p.foot("Digest", h.Digest, plain)
	p.foot("Date", h.Date+", which decides the ends of waivers", plain)
	var books []string
	for _, b := range h.Codebooks {
		text := strings.TrimSpace(b.Name + " " + b.Version)
		if b.Edition != "" {
			text += ", edition " + b.Edition
		}
		books = append(books, text)
	}
	if len(books) > 0 {
		p.foot("Books", strings.Join(books, "; "), plain)
	}
	for i, w := range h.Waivers {
		p.footOnce("Waived", i, fmt.Sprintf("%s on %s, until %s: %s", w.Rule, w.About, w.Expires, w.Reason), plain, plain)
	}
}

// blanks writes entries that are filled in by hand.
func (p *page) blanks(title string, all []commission.Blank) {
	if len(all) == 0 {
		return
	}
	p.blank()
	p.line().put(title, plain).end()
	for _, b := range all {
		what := b.What
		if b.About != "" {
			what = b.About + ", " + what
		}
		if b.Count > 1 {
			what += fmt.Sprintf(" (%d)", b.Count)
		}
		p.line().put("_____", inkSupply).to(9).wrap(what, plain)
	}
}

// footOnce is foot for the first of several entries under one word.
func (p *page) footOnce(word string, i int, text string, head, body ink) {
	if i > 0 {
		word = ""
	}
	p.line().put(word, head).to(9).wrap(text, body)
}

// meterTables writes what strings' meters should show over warmth and over light,
// for whom the conditions were not given.
func (p *page) meterTables(plan *commission.Plan) {
	var shown []*commission.Table
	for i := range plan.Tables {
		t := &plan.Tables[i]
		warm, lit := plan.Now.CellTemperature != nil, plan.Now.Irradiance != nil
		if t.Over == "degC" && !warm && t.Name == "open-circuit voltage" || t.Over == "W/m2" && !(warm && lit) {
			shown = append(shown, t)
		}
	}
	if len(shown) == 0 {
		return
	}
	p.blank()
	p.line().put("WHAT A METER SHOWS on one string", plain).end()
	for _, t := range shown {
		if title := t.Name + " " + t.Constant; p.narrow() {
			p.line().put(t.About, plain).end()
			p.line().to(2).wrap(title, plain)
		} else {
			p.pair(p.line(), t.About, title)
		}
		if len(t.Values) == 0 {
			p.line().to(2).put(empty(t.Unit), inkSupply).to(12).wrap(lacks(t.Missing, t.Because), inkSupply)
			continue
		}
		p.meterRows(t)
	}
}

// meterRows writes a table's values side by side, as many as a line takes.
func (p *page) meterRows(t *commission.Table) {
	at, values := make([]string, len(t.Values)), make([]string, len(t.Values))
	first, second := 0, 0
	for i := range t.Values {
		at[i], values[i] = strconv.FormatFloat(t.At[i], 'f', 0, 64)+" "+t.Over, show(t.Values[i], t.Unit)
		first, second = max(first, len(at[i])), max(second, len(values[i]))
	}
	pair := 2 + first + 2 + second + 2 // its margin, both columns and what is between them
	across := max(1, p.width/pair)
	for from := 0; from < len(at); from += across {
		l := p.line()
		for i := from; i < min(from+across, len(at)); i++ {
			start := (i-from)*pair + 2
			l.right(start+first, at[i], plain).right(start+first+2+second, values[i], plain)
		}
		l.end()
	}
}
