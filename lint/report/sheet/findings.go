package sheet

import (
	"fmt"
	"math"
	"slices"
	"strings"
	"unicode/utf8"

	"stringline/lint"
	"stringline/lint/report"
	"stringline/lint/verdict"
	"stringline/schema/source"
)

// finding is one entry of the deficiency list.
type finding struct {
	Number              int
	Grade, Outcome      string
	Subject, Rule, Says string
	Where               []string // file by file
	Measures            []report.Measure
	Because             string
	Rests, Supply       []string
	Remedy, Source      string
	Fault               string
	Lines               []report.WorkLine
	Roots               []int // lines of the worksheet that it is made of
}

// limit is one row of the table of headroom, with where its mark stands.
type limit struct {
	report.LimitRow
	At     float64 // of the mark, in % of the line's width
	Beyond bool    // the mark is off the paper
	Words  string
}

// limitAt is where the limit stands, in % of the line's width.
const limitAt = 80

// limits is a table of them.
type limits struct {
	Caption, Told string // Told: what stands where the table is folded
	Rows          []limit
}

// roomy is the headroom from which a limit that is met may stay off paper: a
// quarter. A choice of layout, which judges nothing.
const roomy = 0.25

// longNote is the length from which the formula of a yes or a no says less to a
// reader than its sentence does; its values stand in the workings.
const longNote = 120

// headroom lays out every limit, least left first. What is broken, not proven or
// near its limit is always printed; the long rest folds.
func (p *page) headroom(d *lint.DesignResult) {
	near := &limits{Caption: "Limits with the least left, and all that are broken or not proven"}
	far := &limits{Caption: "Limits with more left"}
	for _, r := range report.LimitRows(d) {
		l := limit{LimitRow: r, At: math.Max(0, r.Used) * limitAt}
		switch {
		case r.Unproven:
			l.At, l.Words = limitAt, "not proven"
		case !r.Measured && r.Broken:
			l.At, l.Words = 90, "past the limit"
		case !r.Measured:
			l.At, l.Words = 0, "within the limit"
		case r.Broken:
			l.At = math.Max(l.At, limitAt+3) // seen to be past it, however little
			l.Words = "past the limit"
		default:
			l.At = math.Min(l.At, limitAt-2.5)
			l.Words = report.Percent(r.Used) + " used"
		}
		if l.At > 98 {
			l.At, l.Beyond = 98, true
		}
		if r.Broken || r.Unproven || !r.Measured || r.Used > 1-roomy {
			near.Rows = append(near.Rows, l)
		} else {
			far.Rows = append(far.Rows, l)
		}
	}
	far.Told = fmt.Sprintf("Limits that are met with %s left or more, %d", report.Percent(roomy), len(far.Rows))
	if len(near.Rows) > 0 {
		p.Headroom = near
	}
	if len(far.Rows) > 0 {
		p.Roomy = far
	}
}

func (p *page) problems(r *lint.Result, d *lint.DesignResult) {
	for _, e := range slices.Concat(r.Problems, d.Problems) {
		var hint []string
		for _, part := range []struct{ what, text string }{{"expected ", e.Expected}, {"found ", e.Found}, {"did you mean ", e.Near}} {
			if part.text != "" {
				hint = append(hint, part.what+part.text)
			}
		}
		p.Problems = append(p.Problems, problem{e.At.String(), e.Block, e.Message, strings.Join(hint, "; ")})
	}
}

// verdicts sorts them: what stands against the design with its workings, then
// what is met, waived, and what does not apply. All of them point into one
// worksheet, where every number that a verdict rests on stands once.
func (p *page) verdicts(d *lint.DesignResult) {
	s := d.System
	var ids []string
	mentioned := make([][]string, len(d.Verdicts))
	for i := range d.Verdicts {
		if d.Verdicts[i].Outcome != verdict.DoesNotApply {
			mentioned[i] = report.Mentioned(s, &d.Verdicts[i])
			ids = append(ids, mentioned[i]...)
		}
	}
	lines, numbers := report.WorkLines(s, ids...)
	p.Workings = lines
	p.Met = &table{Caption: "Judgements that are met", Class: "wide met", Heads: []string{"Rule", "About", "Found", "Limit", "Left", "Workings"}}
	p.Apart = &table{Caption: "Rules that do not apply", Class: "wide", Heads: []string{"Rule", "About", "Because"}}
	p.Waivers = &table{Caption: "Waivers and accepted findings", Class: "wide", Heads: []string{"Rule", "On", "State", "Reason", "Approved by", "Until"}}
	refs := func(i int) (all []int) {
		for _, id := range mentioned[i] {
			all = append(all, numbers[id])
		}
		slices.Sort(all)
		return all
	}
	for i := range d.Verdicts {
		v := &d.Verdicts[i]
		switch v.Outcome {
		case verdict.Meets:
			found, allowed, left := sides(v)
			p.Met.add(cell{Text: v.Rule, Note: report.Sentence(v)}, said(report.Subject(v)), found, allowed, left, cell{Kind: "note", Refs: refs(i)})
		case verdict.DoesNotApply:
			p.Apart.add(said(v.Rule), said(report.Subject(v)), said(v.Because))
		}
	}
	p.waivers(d)
	p.Met, p.Apart, p.Waivers = p.Met.or(), p.Apart.or(), p.Waivers.or()
	for i, v := range report.Findings(d) {
		f := finding{
			Number: i + 1, Grade: string(v.Grade), Outcome: string(v.Outcome), Subject: report.Subject(v), Rule: v.Rule, Says: report.Sentence(v),
			Measures: report.Measures(v), Rests: report.Rests(v), Source: v.Source, Where: strings.Split(report.Places(v.At), "  "),
		}
		for n := range f.Measures {
			if m := &f.Measures[n]; utf8.RuneCountInString(m.Note) > longNote && (m.Value == "yes" || m.Value == "no") {
				m.Note = "as the workings tell"
			}
		}
		f.Because = report.Reason(v)
		if v.Accepted != nil { // and got worse, or it were no finding
			f.Rests = append(f.Rests, "accepted on "+v.Accepted.Was.Since+", and worse now: "+v.Accepted.Worse)
		}
		if v.Fault != nil {
			f.Fault = v.Fault.Message
			if v.Fault.At.Valid() {
				f.Fault += ", in " + v.Fault.At.String()
			}
			f.Measures = nil
		}
		if v.Outcome == verdict.Unproven {
			f.Supply = report.Supplies(v.Missing)
		} else if v.Outcome == verdict.Breaks {
			f.Remedy = v.Remedy
		}
		ids := report.Mentioned(s, v)
		f.Lines = below(lines, numbers, ids)
		for _, l := range f.Lines {
			p.Bears[l.Number] = true
		}
		for _, id := range ids {
			f.Roots = append(f.Roots, numbers[id])
		}
		slices.Sort(f.Roots)
		p.Findings = append(p.Findings, f)
	}
}

// waivers lists all that the design has: those in force with what they permit,
// and those that permit nothing (which are findings besides).
func (p *page) waivers(d *lint.DesignResult) {
	used := map[source.Range]bool{}
	for i := range d.Verdicts {
		if v := &d.Verdicts[i]; v.Waiver != nil && v.Outcome == verdict.Waived {
			used[v.Waiver.At] = true
			p.Waivers.add(said(v.Rule), said(report.Subject(v)), said("in force"), told(v.Waiver.Reason), told(v.Waiver.ApprovedBy), said(v.Waiver.Expires))
		}
	}
	for i := range d.Verdicts { // a baseline's findings are no items, and must not be passed over
		if v := &d.Verdicts[i]; v.Held() {
			p.Waivers.add(said(v.Rule), said(report.Subject(v)), cell{Text: "accepted by a baseline: " + string(v.Outcome), Kind: string(v.Grade)},
				said(report.Sentence(v)), said(""), said("since "+v.Accepted.Was.Since))
		}
	}
	for _, w := range d.System.Design().Waivers {
		if !used[w.Block.Header] {
			p.Waivers.add(said(w.Rule), told(strings.Join(w.On, ", ")), cell{Text: "permits nothing: see the findings", Kind: "fix"},
				told(w.Reason), told(w.ApprovedBy), said(w.Expires))
		}
	}
}

// sides gives what was found, the limits and what is left, as a row shows them.
func sides(v *verdict.Verdict) (found, allowed, left cell) {
	for _, m := range report.Measures(v) {
		switch m.Label {
		case "found":
			found = figure(m.Value)
		case "also":
		default:
			if allowed.Text != "" {
				allowed.Text += "; "
			}
			allowed.Text += m.Value
			allowed.Kind = "figure"
		}
	}
	switch {
	case v.Headroom != nil:
		left = figure(report.Percent(*v.Headroom))
	case v.Spare != nil:
		left = figure(report.Show(v.Spare.Value, v.Spare.Unit))
	}
	return found, allowed, left
}

// below gives the lines that facts rest on, themselves included, as they are
// numbered in the whole worksheet.
func below(lines []report.WorkLine, numbers map[string]int, ids []string) []report.WorkLine {
	wanted := map[int]bool{}
	var want func(n int)
	want = func(n int) {
		if n == 0 || wanted[n] {
			return
		}
		wanted[n] = true
		for _, in := range lines[n-1].Inputs {
			want(in)
		}
	}
	for _, id := range ids {
		want(numbers[id])
	}
	var found []report.WorkLine
	for _, l := range lines {
		if wanted[l.Number] {
			found = append(found, l)
		}
	}
	return found
}

// folded says what paper leaves out unless it is unfolded first. Nothing that
// stands against the design is among it.
func (p *page) folded() string {
	var what []string
	if p.Roomy != nil {
		what = append(what, fmt.Sprintf("%d limits that are met with %s left or more", len(p.Roomy.Rows), report.Percent(roomy)))
	}
	if p.Met != nil {
		what = append(what, fmt.Sprintf("%d judgements that are met", len(p.Met.Rows)))
	}
	if p.Apart != nil {
		what = append(what, fmt.Sprintf("%d rules that do not apply", len(p.Apart.Rows)))
	}
	if len(p.Workings) > len(p.Bears) {
		what = append(what, fmt.Sprintf("%d lines of workings that no finding rests on", len(p.Workings)-len(p.Bears)))
	}
	if len(what) == 0 {
		return ""
	}
	return "Folded, and printed only where they are unfolded first: " + strings.Join(what, "; ") + "."
}
