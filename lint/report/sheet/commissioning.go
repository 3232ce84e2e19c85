package sheet

import (
	"fmt"
	"strings"

	"stringline/lint"
	"stringline/lint/commission"
	"stringline/lint/report"
)

// plan is the commissioning sheet, as the page shows it.
type plan struct {
	Energize   bool
	Says       string
	Now        []string
	Hazards    []string
	Serials    []commission.Blank
	Blanks     []commission.Blank
	Sections   []section
	Tables     []*table
	Signatures []commission.Blank
}

type section struct {
	Title    string
	Cautions []string
	Table    *table
}

// commissioning takes the plan in: its settings become the page of settings, the
// rest the sheet that is filled in on site.
func (p *page) commissioning(d *lint.DesignResult, c commission.Conditions) {
	made := commission.Of(d, c)
	out := &plan{
		Energize: made.Standing.Energize, Says: made.Standing.Says, Now: report.MomentWords(made.Now.Missing), Hazards: made.Hazards,
		Serials: made.Head.Serials, Blanks: made.Head.Blanks, Signatures: made.Signatures,
	}
	if len(out.Now) > 0 {
		out.Now = []string{"What meters should show in light is an empty entry until this sheet is made for the moment: give " + strings.Join(out.Now, " and ") + "."}
	}
	if made.Now.Note != "" {
		out.Now = append(out.Now, made.Now.Note)
	}
	for i := range made.Sections {
		s := &made.Sections[i]
		if len(s.Lines) == 0 {
			continue
		}
		one := section{Title: s.Title, Cautions: s.Cautions, Table: sectionTable(s)}
		if s.Key == commission.Settings {
			p.Settings = &one
			continue
		}
		out.Sections = append(out.Sections, one)
	}
	for i := range made.Tables {
		out.Tables = append(out.Tables, shown(&made.Tables[i]))
	}
	p.Plan = out
}

func sectionTable(s *commission.Section) *table {
	t := &table{Caption: s.Title, Class: "wide form", Heads: []string{"No.", "What", "Expected", "Found", "By"}}
	if s.Key == commission.Settings {
		t.Heads[2], t.Heads[3] = "To be set", "Read back"
	}
	for i := range s.Lines {
		l := &s.Lines[i]
		what := cell{Text: l.Says, Note: strings.Join(append([]string{l.About}, l.With...), ", "), Warn: l.Caution}
		t.add(said(fmt.Sprint(l.Number)), what, expected(l), foundOn(l), cell{Kind: "box"})
	}
	return t
}

// expected gives what a line expects, one entry after the other.
func expected(l *commission.Line) cell {
	var c cell
	for i := range l.Expect {
		e := &l.Expect[i]
		text := report.ExpectedWords(e)
		if l.Kind == commission.Set { // what it is stands beside it
			text = report.SetWords(e)
		}
		if needs := report.ExpectedSupply(e); len(needs) > 0 {
			text += " (supply " + strings.Join(needs, "; ") + ")"
		}
		one := item{}
		if !e.Known() {
			one.Kind = "supply"
		}
		if e.Source != "" && e.Source != "the design" {
			text += " [" + e.Source + "]"
		}
		one.Text = text
		c.Items = append(c.Items, one)
	}
	return c
}

// foundOn gives the readings of a line and the boxes that are still empty.
func foundOn(l *commission.Line) cell {
	c := cell{Kind: "box"}
	if l.Kind == commission.Check || l.Kind == commission.Do {
		return c
	}
	for i := range l.Readings {
		c.Items = append(c.Items, item{Text: report.ReadingWords(&l.Readings[i])})
	}
	if l.Found != nil {
		c.Items = append(c.Items, item{Text: report.Show(*l.Found, l.Unit) + ", " + strings.ReplaceAll(l.State, "_", " ")})
	}
	if len(c.Items) > 0 && l.Remains == 0 {
		c.Kind = ""
	} else {
		c.Text = "not measured"
		if l.Kind == commission.Set {
			c.Text = "not read back"
		}
		if l.Remains > 1 {
			c.Text = fmt.Sprintf("%s, %d of them", c.Text, l.Remains)
		}
	}
	return c
}

// shown is a table of expected readings over a condition.
func shown(from *commission.Table) *table {
	t := &table{Caption: from.About + ": " + from.Name + " " + from.Constant, Class: "figures", Heads: []string{from.Over, from.Unit}}
	for n, at := range from.At {
		value := figure(report.Empty(from.Unit))
		if n < len(from.Values) {
			value = figure(report.Show(from.Values[n], from.Unit))
		}
		t.add(said(report.Show(at, from.Over)), value)
	}
	if len(from.At) == 0 {
		value := figure(report.Empty(from.Unit))
		value.Note = wants(from.Missing, from.Because)
		t.add(said(report.Empty(from.Over)), value)
	}
	return t
}
