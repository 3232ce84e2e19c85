package report

import (
	"cmp"
	"fmt"
	"io"
	"strings"

	"stringline/lint"
	"stringline/lint/verdict"
	"stringline/schema/codebook"
)

// ExplainMarkdown writes the same as [Explain] as Markdown: a page for a
// workshop's own documents.
func ExplainMarkdown(w io.Writer, e *lint.Explanation) error {
	m := &markdown{}
	for i := range e.Problems {
		p := &e.Problems[i]
		m.line("> **Error** %s: %s", code(p.At.String()), mark(p.Message))
		m.line("")
	}
	level := "#"
	if e.Whole && len(e.Rules) > 0 {
		m.book(&e.Book)
		level = "##"
	}
	for i := range e.Rules {
		m.rule(level, e, &e.Rules[i])
	}
	_, err := io.WriteString(w, m.b.String())
	return err
}

type markdown struct{ b strings.Builder }

func (m *markdown) line(format string, args ...any) { fmt.Fprintf(&m.b, format+"\n", args...) }

// mark makes a text of a codebook or a design plain words in Markdown: nothing in
// it is a link, a tag, a heading or a table's edge.
func mark(text string) string {
	var b strings.Builder
	for _, r := range Escape(strings.Join(strings.Fields(text), " ")) {
		if strings.ContainsRune("\\`*_{}[]<>#|~!&", r) {
			b.WriteByte('\\')
		}
		b.WriteRune(r)
	}
	return b.String()
}

// code shows an id, a path or a value in Markdown as it is.
func code(text string) string {
	text = strings.ReplaceAll(Escape(text), "|", `\|`)
	fence := "`"
	for strings.Contains(text, fence) {
		fence += "`"
	}
	if len(fence) > 1 {
		return fence + " " + text + " " + fence
	}
	return fence + text + fence
}

// row writes one line of a table of two columns; an empty value is left out.
func (m *markdown) row(label, value string) {
	if value != "" {
		m.line("| %s | %s |", label, value)
	}
}

func (m *markdown) table(left, right string) {
	m.line("| %s | %s |", left, right)
	m.line("| --- | --- |")
}

func (m *markdown) book(b *lint.BookPage) {
	m.line("# Codebook %s %s", code(b.Name), mark(b.Version))
	m.line("")
	m.table("codebook", b.Name)
	m.row("edition", mark(b.Edition))
	m.row("jurisdiction", mark(b.Jurisdiction))
	m.row("needs", mark(b.Needs))
	m.row("digest", code(b.Digest))
	m.row("covers", mark(strings.Join(b.Covers, ", ")))
	m.row("cannot judge", mark(strings.Join(b.CannotJudge, "; ")))
	for i := range b.Sources {
		s := &b.Sources[i]
		m.row("source "+code(s.Key), mark(s.Title)+" ("+mark(s.Status)+")")
	}
	m.details(b.Name, b.Parameters, b.Attributes, b.Tables, b.Sources)
	m.line("")
}

func (m *markdown) details(book string, parameters []lint.ParameterPage, asked []lint.AttributePage, tables []lint.TablePage, sources []codebook.Source) {
	for i := range parameters {
		m.row("parameter", mark(parameterWords(&parameters[i])))
	}
	for i := range asked {
		a := &asked[i]
		m.row("asks", code(a.Name)+" in "+code(fmt.Sprintf("declared %q", book))+" of "+mark(a.Of)+", "+mark(a.Kind)+": "+mark(a.Means))
	}
	for i := range tables {
		m.row("table", mark(tableWords(&tables[i], sources)))
	}
}

func (m *markdown) rule(level string, e *lint.Explanation, r *lint.RulePage) {
	m.line("%s %s", level, code(r.ID))
	m.line("")
	m.line("**%s**", mark(r.Title))
	m.line("")
	m.line("%s", mark(r.Description))
	m.line("")
	m.table("rule", code(r.ID))
	m.row("grade", mark(gradeWords(r)))
	m.row("judges", mark(cmp.Or(strings.TrimSuffix(r.Each+": "+r.EachMeans, ": "), r.Each)))
	m.row("source", mark(r.Source))
	for i := range r.Cites {
		m.row("cites", mark(r.Cites[i].Title)+" ("+mark(r.Cites[i].Status)+")")
	}
	m.row("remedy", mark(r.Remedy))
	if len(r.Yields) > 0 {
		m.row("yields", mark(yieldWords(r.Yields)))
	}
	for i := range r.Answers {
		m.row("answers", mark(answerWords(&r.Answers[i])))
	}
	m.details(e.Book.Name, r.Parameters, r.Attributes, r.Tables, e.Book.Sources)
	for i := range r.Equivalent {
		m.row("equivalent", code(r.Equivalent[i].Mutant)+" "+mark(r.Equivalent[i].Reason))
	}
	m.row("written in", code(r.At.File))
	m.line("")
	m.fenced("rego", r.Rego)
	if e.Design != nil {
		m.design(level+"#", e.Design, r)
	}
}

// fenced writes a block of code that nothing in it can end.
func (m *markdown) fenced(language, text string) {
	fence := "```"
	for strings.Contains(text, fence) {
		fence += "`"
	}
	m.line("%s%s", fence, language)
	for line := range strings.Lines(text) {
		line = strings.TrimRight(line, "\r\n")
		tabs := len(line) - len(strings.TrimLeft(line, "\t"))
		m.line("%s%s", strings.Repeat("\t", tabs), Escape(line[tabs:]))
	}
	m.line("%s", fence)
	m.line("")
}

// design writes one rule's verdicts on a design.
func (m *markdown) design(level string, d *lint.DesignResult, r *lint.RulePage) {
	m.line("%s On %s (%s)", level, mark(cmp.Or(d.Name, d.File)), code(d.File))
	m.line("")
	for i := range d.Verdicts {
		v := &d.Verdicts[i]
		if v.Rule != r.ID {
			continue
		}
		m.line("- %s: **%s**", code(subject(v)), strings.ReplaceAll(string(v.Outcome), "_", " "))
		m.verdict(d, v)
	}
	m.line("")
}

func (m *markdown) verdict(d *lint.DesignResult, v *verdict.Verdict) {
	switch v.Outcome {
	case verdict.DoesNotApply:
		m.line("  - because %s", mark(v.Because))
		return
	case verdict.Void:
		if v.Fault != nil {
			m.line("  - fault: %s (%s)", mark(v.Fault.Message), code(v.Fault.At.String()))
		}
		return
	}
	for _, row := range measures(v) {
		words := code(row.value)
		if row.note != "" {
			words += " " + mark(row.note)
		}
		m.line("  - %s %s", cmp.Or(row.label, "and"), words)
	}
	if v.Headroom != nil {
		m.line("  - headroom %s", percent(*v.Headroom))
	}
	if words := reason(v); words != "" {
		m.line("  - because %s", mark(words))
	}
	for _, words := range supplies(v.Missing) {
		m.line("  - supply %s", mark(words))
	}
	for _, l := range worksheetOf(rootsOf(d.System, v)...) {
		f := &l.work.Fact
		words := code(f.ID) + " " + mark(factEntry(f, l.work.Entry.Attribute))
		if from := origin(&l); from != "" {
			words += ", " + mark(from)
		}
		m.line("  - line %d: %s", l.number, words)
	}
}
