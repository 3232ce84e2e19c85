package report

import (
	"cmp"
	"fmt"
	"io"
	"strings"

	"stringline/lint"
	"stringline/lint/facts"
	"stringline/lint/verdict"
	"stringline/schema/codebook"
)

// Explain writes what a codebook, or one of its rules, says about itself, for
// people; with a design, how it was judged and why a rule did not apply.
func Explain(w io.Writer, e *lint.Explanation, opts Page) error {
	p := newPage(opts)
	if len(e.Problems) > 0 {
		p.errors(e.Problems)
		if len(e.Rules) > 0 {
			p.blank()
		}
	}
	if e.Whole && len(e.Rules) > 0 {
		p.bookPage(&e.Book)
	}
	for i := range e.Rules {
		if i > 0 || e.Whole {
			p.blank()
		}
		p.rulePage(e, &e.Rules[i])
	}
	return p.flush(w)
}

func (p *page) bookPage(b *lint.BookPage) {
	origin := "a workshop's own"
	if b.Embedded {
		origin = "comes with the program"
	}
	p.pair(p.line(), "CODEBOOK "+b.Name+" "+b.Version, origin)
	for _, row := range []struct{ word, text string }{
		{"Edition", b.Edition}, {"Place", b.Jurisdiction}, {"Needs", strings.TrimSuffix("version "+b.Needs+" of this program or newer", "version  of this program or newer")}, {"Digest", b.Digest},
		{"Covers", strings.Join(b.Covers, ", ")}, {"Not judged", strings.Join(b.CannotJudge, "; ")},
	} {
		if row.text != "" {
			p.wide(row.word).wrap(row.text, plain)
		}
	}
	for i := range b.Sources {
		s := &b.Sources[i]
		p.wideOnce("Sources", i).wrap(s.Key+": "+s.Title+" ("+s.Status+")", plain)
	}
	p.parameters(b.Parameters)
	p.asked(b.Name, b.Attributes)
	p.tables(b.Tables, b.Sources)
}

// wide is a label of a page, with room for "Parameters" before what it labels.
func (p *page) wide(word string) *line { return p.line().put(word, plain).to(12) }

func (p *page) wideOnce(word string, i int) *line {
	if i > 0 {
		word = ""
	}
	return p.wide(word)
}

func (p *page) parameters(all []lint.ParameterPage) {
	for i := range all {
		p.wideOnce("Parameters", i).wrap(parameterWords(&all[i]), plain)
	}
}

func parameterWords(x *lint.ParameterPage) string {
	words := x.Name + " = " + parameterText(&x.ParameterInUse)
	if x.SetAt.Valid() {
		words += ", set at " + x.SetAt.String() + " (default " + x.Default + ")"
	}
	if x.Range != "" {
		words += "; " + x.Range
	}
	return words + ": " + x.Means
}

func (p *page) asked(book string, all []lint.AttributePage) {
	for i := range all {
		a := &all[i]
		p.wideOnce("Asks", i).wrap(fmt.Sprintf("%s, in declared %q of %s, %s: %s", a.Name, book, strings.ReplaceAll(a.Of, "_", " "), a.Kind, a.Means), plain)
	}
}

func (p *page) tables(all []lint.TablePage, sources []codebook.Source) {
	for i := range all {
		p.wideOnce("Tables", i).wrap(tableWords(&all[i], sources), plain)
	}
}

func tableWords(t *lint.TablePage, sources []codebook.Source) string {
	source := t.Source
	for i := range sources {
		if sources[i].Key == t.Source {
			source = sources[i].Title
		}
	}
	return fmt.Sprintf("%s: %s; by %s; %s, from %s (%s)", t.Name, strings.TrimSuffix(t.Title+", in "+t.Unit, ", in "), strings.Join(t.Axes, " and "), count(t.Rows, "row", "rows"), source, t.Status)
}

func (p *page) rulePage(e *lint.Explanation, r *lint.RulePage) {
	right := "codebook " + e.Book.Name + " " + e.Book.Version
	p.pair(p.line(), "RULE "+r.ID, right)
	p.line().wrap(r.Title, plain)
	p.blank()
	p.line().wrap(r.Description, plain)
	p.blank()
	p.wide("Grade").wrap(gradeWords(r), gradeInk(r.Grade))
	p.wide("Judges").wrap(cmp.Or(strings.TrimSuffix(r.Each+": "+r.EachMeans, ": "), r.Each), plain)
	p.wide("Source").wrap(r.Source, plain)
	for i := range r.Cites {
		c := &r.Cites[i]
		p.wideOnce("Cites", i).wrap(c.Title+" ("+c.Status+")", plain)
	}
	p.wide("Remedy").wrap(r.Remedy, plain)
	if len(r.Yields) > 0 {
		p.wide("Yields").wrap(yieldWords(r.Yields), plain)
	}
	for i := range r.Answers {
		p.wideOnce("Answers", i).wrap(answerWords(&r.Answers[i]), plain)
	}
	p.parameters(r.Parameters)
	p.asked(e.Book.Name, r.Attributes)
	p.tables(r.Tables, e.Book.Sources)
	for i := range r.Equivalent {
		p.wideOnce("Equivalent", i).wrap(r.Equivalent[i].Mutant+": "+r.Equivalent[i].Reason, plain)
	}
	p.wide("Written in").wrap(r.At.File, plain)
	p.blank()
	for line := range strings.Lines(r.Rego) {
		p.code(strings.TrimRight(line, "\r\n"))
	}
	if e.Design != nil {
		p.onDesign(e.Design, r)
	}
}

// yieldWords says for want of what a rule lets another answer.
func yieldWords(names []string) string {
	return "to a rule of another codebook that answers it, where only " + strings.Join(names, ", ") + " is missing"
}

// answerWords says which rule of another codebook a rule answers.
func answerWords(a *lint.Answer) string {
	if len(a.With) == 0 {
		return a.Rule + ", where it lacks a figure"
	}
	return a.Rule + ", where it lacks a figure, together with " + strings.Join(a.With, ", ")
}

func gradeWords(r *lint.RulePage) string {
	words := string(r.Grade)
	if r.GradeAt.Valid() {
		words += ", instead of " + string(r.BookGrade) + ", set at " + r.GradeAt.String()
	}
	if !r.Waivable {
		words += "; cannot be waived"
	}
	return words
}

// code writes a line of Rego as it stands, tabs as two spaces. It is not
// wrapped: a reader may want to copy it.
func (p *page) code(text string) {
	text = strings.ReplaceAll(text, "\t", "  ")
	if strings.TrimSpace(text) == "" {
		p.blank()
		return
	}
	indent := len(text) - len(strings.TrimLeft(text, " "))
	p.line().to(2+indent).put(text[indent:], plain).end()
}

// onDesign writes one rule's verdicts on a design, each with the workings that it
// rests on, and why it did not apply elsewhere.
func (p *page) onDesign(d *lint.DesignResult, r *lint.RulePage) {
	p.blank()
	p.pair(p.line(), "ON "+cmp.Or(d.Name, d.File), d.File)
	told := false
	for i := range d.Verdicts {
		v := &d.Verdicts[i]
		if v.Rule != r.ID {
			continue
		}
		told = true
		p.blank()
		p.pair(p.line(), subject(v), strings.ReplaceAll(string(v.Outcome), "_", " "))
		switch v.Outcome {
		case verdict.DoesNotApply:
			p.label("because").wrap(v.Because, plain)
			continue
		case verdict.Void:
			p.void(v)
			continue
		}
		p.compared(v)
		if v.Headroom != nil {
			p.label("headroom").wrap(percent(*v.Headroom), plain)
		}
		for _, words := range rests(v) {
			p.label("rests on").wrap(words, plain)
		}
		for j, words := range supplies(v.Missing) {
			p.labelOnce("supply", j).wrap(words, inkSupply)
		}
		p.verdictWorkings(d.System, v)
	}
	if !told {
		p.line().wrap("No verdict of this rule on the design.", plain)
	}
}

// verdictWorkings writes the numbered lines below what a verdict compares.
func (p *page) verdictWorkings(s *facts.System, v *verdict.Verdict) {
	lines := worksheetOf(rootsOf(s, v)...)
	if len(lines) == 0 {
		return
	}
	values := 0
	for _, l := range lines {
		if n := columns(Escape(factEntry(&l.work.Fact, l.work.Entry.Attribute))); n <= 16 {
			values = max(values, n)
		}
	}
	p.line().to(p.labels()).put("workings", plain).end()
	for i := range lines {
		p.workLine(&lines[i], lines, values)
	}
}

// rootsOf finds the facts that both sides of a verdict name.
func rootsOf(s *facts.System, v *verdict.Verdict) []*facts.Work {
	var roots []*facts.Work
	seen := map[string]bool{}
	add := func(m *verdict.Measured) {
		words := []string{m.ID}
		if m.ID == "" {
			words = strings.FieldsFunc(m.Formula, func(r rune) bool { return r >= 0x80 || !nameByte(byte(r)) && r != '-' })
		}
		for _, id := range words {
			if w, ok := s.Work(id); ok && !seen[id] {
				seen[id] = true
				roots = append(roots, w)
			}
		}
	}
	if v.Is != nil {
		add(v.Is)
	}
	for i := range v.Limits {
		add(&v.Limits[i])
	}
	return roots
}
