package report

import (
	"fmt"
	"io"
	"math"
	"strconv"
	"strings"

	"stringline/lint/sweep"
	"stringline/lint/verdict"
	"stringline/schema/quantity"
)

// Sweep writes what becomes of facts and verdicts as one or two values vary, and
// where each rule turns.
func Sweep(w io.Writer, r *sweep.Result, opts Page) error {
	p := newPage(opts)
	p.head(r.Base)
	for i, a := range r.Axes {
		text := "SWEEP of "
		if i > 0 {
			text = "and of "
		}
		text += a.ID + ": " + axisSpan(a)
		switch {
		case a.InForce != "":
			text += fmt.Sprintf("; a parameter of codebook %s, %s in force", a.Book, a.InForce)
		case a.Book != "":
			text += "; an answer to codebook " + a.Book
		case a.Part != "":
			text += "; in " + a.Part + ", wherever it is used"
		}
		p.line().wrap(text, plain)
	}
	p.blank()
	p.turns(r)
	if len(r.Throughout) > 0 {
		p.blank()
		p.line().put("THROUGHOUT, whatever the value", plain).end()
		for i := range r.Throughout {
			p.foundThroughout(&r.Throughout[i])
		}
	}
	p.blank()
	p.sweepTable(r)
	p.sweepErrors(r)
	p.sweepBasis(r)
	p.caution()
	return p.flush(w)
}

// foundThroughout writes a finding without its figures, which the sweep may move.
func (p *page) foundThroughout(v *verdict.Verdict) {
	p.line().to(2).put(strings.ToUpper(string(v.Grade)), gradeInk(v.Grade)).to(9).wrap(fmt.Sprintf("%s, %s", subject(v), v.Rule), plain)
	if v.Outcome == verdict.Unproven {
		p.line().to(9).wrap("unproven: "+lacks(v.Missing, v.Because), inkSupply)
		return
	}
	p.line().to(9).wrap("against it: "+v.Title, plain)
}

func axisSpan(a *sweep.Axis) string {
	first, last := a.Points[0], a.Points[len(a.Points)-1]
	if len(a.Points) <= 6 && !a.Between {
		texts := make([]string, len(a.Points))
		for i, p := range a.Points {
			texts[i] = p.Text
		}
		return strings.Join(texts, ", ")
	}
	return fmt.Sprintf("%s to %s, %d points", first.Text, last.Text, len(a.Points))
}

func (p *page) turns(r *sweep.Result) {
	if len(r.Turns) == 0 {
		p.line().wrap("No verdict turns between these points.", plain)
		return
	}
	p.line().put("WHERE RULES TURN", plain).end()
	last := ""
	for i := range r.Turns {
		t := &r.Turns[i]
		if key := t.Key(); key != last {
			p.pair(p.line().to(2).put(strings.ToUpper(string(t.Grade)), gradeInk(t.Grade)).to(9), subjectText(t.About, t.Which), t.Rule)
			last = key
		}
		p.line().to(9).wrap(TurnText(r, t), plain)
	}
}

// subjectText names what a verdict is about.
func subjectText(about, which string) string {
	if which != "" {
		return about + ", " + which
	}
	return about
}

// TurnText says where a verdict turns: "met down to -31.42 degC, breaks below".
func TurnText(r *sweep.Result, t *sweep.Turn) string {
	text := TurnAlong(r.Axes[t.Axis], t)
	if t.Other >= 0 {
		other := r.Axes[1-t.Axis]
		text = fmt.Sprintf("with %s %s: %s %s", other.ID, other.Points[t.Other].Text, r.Axes[t.Axis].ID, text)
	}
	return text
}

// TurnAlong is [TurnText] without the other axis.
func TurnAlong(a *sweep.Axis, t *sweep.Turn) string {
	text := ""
	low, high := outcomeText(t.Before), outcomeText(t.After)
	switch {
	case !a.Between:
		text = fmt.Sprintf("%s at %s, %s at %s", low, t.Low.Text, high, t.High.Text)
	case t.After == verdict.Meets:
		text = fmt.Sprintf("met down to %s, %s below", turnValue(a, t.High.Value, math.Ceil), low)
	case t.Before == verdict.Meets:
		text = fmt.Sprintf("met up to %s, %s above", turnValue(a, t.Low.Value, math.Floor), high)
	default:
		text = fmt.Sprintf("%s up to %s, %s above", low, turnValue(a, t.Low.Value, math.Floor), high)
	}
	return text
}

func outcomeText(o verdict.Outcome) string {
	switch o {
	case verdict.Meets:
		return "met"
	case verdict.DoesNotApply:
		return "does not apply"
	case "":
		return "not there"
	}
	return string(o)
}

// turnValue writes a turning point to the decimals that its tolerance gives,
// rounded to the side on which the rule is met.
func turnValue(a *sweep.Axis, value float64, round func(float64) float64) string {
	places := max(0, -int(math.Floor(math.Log10(a.Tolerance)))-1)
	scale := math.Pow(10, float64(places))
	text := strconv.FormatFloat(round(quantity.Round(value)*scale)/scale, 'f', places, 64)
	if a.Unit != "" {
		text += " " + a.Unit
	}
	return text
}

// sweepTable writes the facts point by point: a numbered head for each, since ids
// are long.
func (p *page) sweepTable(r *sweep.Result) {
	const cell = 12
	widest := columns(Escape(r.Axes[0].ID))
	for _, point := range r.Axes[0].Points {
		widest = max(widest, columns(Escape(point.Text)))
	}
	widest = min(widest, 26)
	most := max(1, (p.width-widest-2-18)/cell)
	shown, told := sweepColumns(r.Facts, most)
	for i, c := range shown {
		text := fmt.Sprintf("%s: %s", c.ID, c.Means)
		if c.limit {
			text = fmt.Sprintf("what is allowed for %d", i)
		}
		p.line().right(3, strconv.Itoa(i+1), plain).to(5).wrap(text, plain)
	}
	if more := len(r.Facts) - told; more > 0 {
		p.line().to(5).wrap(fmt.Sprintf("%s not shown: --as csv has all, --facts chooses", count(more, "more fact is", "more facts are")), plain)
	}
	if len(r.Facts) == 0 {
		p.line().wrap("No fact that a rule limits moves, nor its limit; --facts shows others.", plain)
	}
	other := -1
	for i := range r.Rows {
		row := &r.Rows[i]
		if len(r.Axes) == 2 && row.At[1] != other {
			other = row.At[1]
			p.line().put(r.Axes[1].ID+" "+r.Axes[1].Points[other].Text, plain).end()
		}
		if row.At[0] == 0 {
			l := p.line()
			if id := r.Axes[0].ID; columns(Escape(id)) <= widest {
				l.put(id, plain)
			}
			for n := range shown {
				l.right(widest+2+(n+1)*cell, strconv.Itoa(n+1), plain)
			}
			l.to(widest+4+len(shown)*cell).put("findings", plain).end()
		}
		l := p.line().right(widest, r.Axes[0].Points[row.At[0]].Text, plain)
		for n, c := range shown {
			l.right(widest+2+(n+1)*cell, sweepCell(row, &c), plain)
		}
		text, with := sweepFindings(row)
		l.to(widest+4+len(shown)*cell).wrap(text, with)
	}
}

// sweepColumn is a fact, or what is allowed for it.
type sweepColumn struct {
	sweep.Column
	limit bool
}

// sweepColumns gives the columns of the first facts, as many as there is room for:
// where what is allowed moves too, it stands behind its fact.
func sweepColumns(list []sweep.Column, most int) (shown []sweepColumn, told int) {
	for _, c := range list {
		need := 1
		if c.LimitMoves {
			need = 2
		}
		if len(shown)+need > most && told > 0 {
			break
		}
		told++
		if shown = append(shown, sweepColumn{c, false}); c.LimitMoves && len(shown) < most {
			shown = append(shown, sweepColumn{c, true})
		}
	}
	return shown, told
}

func sweepCell(row *sweep.Row, c *sweepColumn) string {
	f, ok := row.Values[c.ID]
	if c.limit {
		limit, ok := row.Limits[c.ID]
		if !ok {
			return "-"
		}
		return show(limit, c.Unit)
	}
	switch {
	case !ok:
		return "-"
	case !f.Known:
		return empty(c.Unit)
	}
	return factValue(&f)
}

// sweepFindings counts what stands against a point, worst first.
func sweepFindings(row *sweep.Row) (string, ink) {
	if len(row.Problems) > 0 {
		return "errors", inkFix
	}
	var texts []string
	with := plain
	for i, word := range []string{"stop", "fix", "advise"} {
		if n := row.Findings[i]; n > 0 {
			texts = append(texts, fmt.Sprintf("%d %s", n, word))
			if len(texts) == 1 {
				with = []ink{inkStop, inkFix, plain}[i]
			}
		}
	}
	if len(texts) == 0 {
		return "none", plain
	}
	return strings.Join(texts, ", "), with
}

// sweepErrors tells why points could not be read, each problem once.
func (p *page) sweepErrors(r *sweep.Result) {
	told := map[string]bool{}
	for i := range r.Rows {
		for j := range r.Rows[i].Problems {
			problem := &r.Rows[i].Problems[j]
			text := pointText(r, &r.Rows[i]) + ": " + problem.Message
			if told[problem.Kind+problem.Block+problem.At.String()] {
				continue
			}
			told[problem.Kind+problem.Block+problem.At.String()] = true
			if len(told) == 1 {
				p.blank()
				p.line().put("ERRORS: what they touch is not judged", inkFix).end()
			}
			p.line().to(2).wrap("from "+text, plain)
		}
	}
}

func pointText(r *sweep.Result, row *sweep.Row) string {
	var texts []string
	for i, a := range r.Axes {
		texts = append(texts, a.ID+" "+a.Points[row.At[i]].Text)
	}
	return strings.Join(texts, ", ")
}

func (p *page) sweepBasis(r *sweep.Result) {
	p.blank()
	for _, a := range r.Axes {
		if a.Between {
			unit := a.Unit
			if unit == "degC" || unit == "degF" {
				unit = map[string]string{"degC": "K", "degF": "degF apart"}[unit]
			}
			p.line().wrap(strings.TrimSpace(fmt.Sprintf("Where %s turns a rule is found by bisection to %s %s and rounded to the side that is met.", a.ID, strconv.FormatFloat(a.Tolerance, 'g', 2, 64), unit)), plain)
		}
	}
	p.line().wrap("Between two points that agree nothing was looked for. Each value was written where it stands, or would stand, and all judged anew.", plain)
	if r.WithoutYear && len(r.NotPut) > 0 {
		p.line().wrap("The year of sun was left out. Not put for want of it: "+strings.Join(r.NotPut, ", ")+".", plain)
	}
}
