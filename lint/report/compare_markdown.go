package report

import (
	"fmt"
	"io"
	"strings"

	"stringline/lint/compare"
	"stringline/schema/source"
)

// CompareMarkdown writes a comparison as Markdown, for a review: what got worse is
// open to read, long tables of the rest are as short as [Compare]'s.
func CompareMarkdown(w io.Writer, c *compare.Comparison, all bool) error {
	m := &compareMarkdown{markdown: &markdown{}, rows: comparePage{all: all}}
	m.line("## Designs compared: was %s, now %s", code(sideName(&c.Was)), code(sideName(&c.Now)))
	m.line("")
	text, _ := comparisonLine(c)
	m.line("**%s**", mark(text))
	m.line("")
	m.unread("In what was", c.Was.Problems)
	m.unread("In what is now", c.Now.Problems)
	if len(c.Books) > 0 {
		m.line("### What judges is not the same")
		m.line("")
		for i := range c.Books {
			for _, words := range bookWords(&c.Books[i]) {
				m.line("- codebook %s: %s", code(c.Books[i].Name), mark(words))
			}
		}
		m.line("")
	}
	for _, d := range worstDesigns(c.Designs) {
		if d.State != compare.Same {
			m.design(d)
		}
	}
	m.line("%s", mark(comparisonCounts(c)))
	m.line("")
	m.line("%s", mark(cautionWords))
	_, err := io.WriteString(w, m.b.String())
	return err
}

type compareMarkdown struct {
	*markdown
	rows comparePage
}

func (m *compareMarkdown) unread(where string, problems source.Problems) {
	for i := range problems {
		p := &problems[i]
		m.line("> **Error** %s: %s %s", mark(where), code(p.At.String()), mark(p.Message))
		m.line("")
	}
}

func (m *compareMarkdown) design(d *compare.Design) {
	name, file := designNames(d)
	m.line("### %s (%s)", mark(name), code(file))
	m.line("")
	text, _ := designLine(d)
	m.line("**%s**", mark(text))
	m.line("")
	m.unread("In what was", d.WasProblems)
	m.unread("In what is now", d.Problems)
	by := byDirection(d.Turns)
	m.turns("Got worse", by[compare.Worse])
	m.turns("Turned otherwise", by[compare.Turned])
	m.margins("Headroom lost, most first", by[compare.Lost])
	m.margins("Headroom won, most first", by[compare.Won])
	m.turns("Got better", by[compare.Better])
	m.written(d)
	m.facts(d)
}

// heads begins a table.
func (m *compareMarkdown) heads(title string, heads ...string) {
	m.line("#### %s", mark(title))
	m.line("")
	m.line("| %s |", strings.Join(heads, " | "))
	m.line("|%s", strings.Repeat(" --- |", len(heads)))
}

func (m *compareMarkdown) more(rest int, what string) {
	m.line("")
	if rest > 0 {
		m.line("And %d more %s; %s shows them.", rest, what, code("--all"))
		m.line("")
	}
}

func (m *compareMarkdown) turns(title string, list []*compare.Turn) {
	if len(list) == 0 {
		return
	}
	m.heads(fmt.Sprintf("%s, %d", title, len(list)), "grade", "rule", "subject", "was", "now", "where")
	for _, t := range list {
		v := eitherVerdict(t)
		now, where := sideWords(t.Now), ""
		if t.Why != "" {
			now += "; " + t.Why
		}
		if t.Now != nil && len(v.At) > 0 {
			where = code(v.At[0].String())
		}
		m.line("| %s | %s | %s | %s | %s | %s |", mark(string(v.Grade)), code(v.Rule), code(subject(v)), mark(sideWords(t.Was)), mark(now), where)
	}
	m.line("")
}

func (m *compareMarkdown) margins(title string, list []*compare.Turn) {
	if len(list) == 0 {
		return
	}
	shown, rest := m.rows.some(len(list))
	m.heads(fmt.Sprintf("%s, %d", title, len(list)), "limit", "was", "now", "left was", "left now")
	for _, t := range list[:shown] {
		r := marginOf(t)
		lead := mark(r.lead)
		if r.limit != "" {
			lead += " (" + mark(r.limit) + ")"
		}
		m.line("| %s | %s | %s | %s | %s |", lead, mark(r.was), mark(r.now), mark(r.leftWas), mark(r.leftNow))
	}
	m.more(rest, "limits")
}

func (m *compareMarkdown) written(d *compare.Design) {
	n := len(d.Renamed) + len(d.Changes)
	if n == 0 {
		return
	}
	m.line("#### Written otherwise, %d", n)
	m.line("")
	for _, r := range d.Renamed {
		m.line("- %s renamed, was %s (%s)", code(r.Now), code(r.Was), code(r.At.String()))
	}
	for i := range d.Changes {
		c := &d.Changes[i]
		lead := code(c.About)
		if c.Attribute != "" {
			lead += ", " + code(c.Attribute)
		}
		m.line("- %s: %s (%s)", lead, mark(changeWords(c)), code(placeOf(c)))
	}
	m.line("")
}

func (m *compareMarkdown) facts(d *compare.Design) {
	for _, g := range factGroups(d.Facts) {
		shown, rest := m.rows.some(len(g.facts))
		m.heads(fmt.Sprintf("Facts that moved %s: %d", g.title(), len(g.facts)), "fact", "was", "now")
		for _, f := range g.facts[:shown] {
			was, now := factSides(f)
			m.line("| %s | %s | %s |", code(f.ID), mark(was), mark(now))
		}
		m.more(rest, "facts")
	}
}
