package report

import (
	"cmp"
	"fmt"
	"io"
	"slices"
	"strings"

	"stringline/lint"
	"stringline/lint/verdict"
	"stringline/schema/source"
)

// Text writes a run for people, in the layout of the trade's own paper: per
// design a head, what to make of it, a deficiency list with numbered items, the
// headroom of every limit, waivers and assumptions; then what was counted. The
// worst design comes first.
func Text(w io.Writer, r *lint.Result, opts Page) error {
	p := newPage(opts)
	if len(r.Problems) > 0 {
		p.errors(r.Problems)
		p.blank()
	}
	p.halved = halved(r.Problems)
	designs := p.worstFirst(r.Designs)
	for i, d := range designs {
		footnotes := p.design(d)
		if last := i == 0 && len(designs) == 1; !last || !footnotes {
			p.blank()
		}
	}
	if len(designs) > 1 {
		p.listing(designs)
		p.blank()
	}
	if len(designs) > 0 {
		p.date(r)
		if len(designs) == 1 {
			p.again(designs[0])
		}
		p.counts(&r.Summary)
		p.caution()
	}
	return p.flush(w)
}

// longPage is how many lines a reader of a terminal can be taken to see at once.
const longPage = 50

// again repeats at the foot of a long page what its head says about the design:
// the head has scrolled away.
func (p *page) again(d *lint.DesignResult) {
	if strings.Count(p.b.String(), "\n") < longPage {
		return
	}
	text, with := p.tally(d).verdictLine()
	p.line().wrap(text, with)
}

// halved reports problems of no one design that may have kept rules from
// judging: a workshop file or a codebook that could not be read. A path that
// leads nowhere takes nothing from the designs that were found.
func halved(problems source.Problems) bool {
	return slices.ContainsFunc(problems, func(p source.Problem) bool { return p.Kind != "path" && p.Kind != "no_design" })
}

// worstFirst orders designs: those that could not be judged in full, then by
// their worst finding and how many there are, then as they came.
func (p *page) worstFirst(designs []lint.DesignResult) []*lint.DesignResult {
	order := make([]*lint.DesignResult, len(designs))
	for i := range designs {
		order[i] = &designs[i]
	}
	slices.SortStableFunc(order, func(a, b *lint.DesignResult) int {
		at, bt := p.tally(a), p.tally(b)
		return cmp.Or(
			cmp.Compare(at.rank(), bt.rank()),
			-cmp.Compare(at.worst(), bt.worst()),
		)
	})
	return order
}

// tally counts what stands against a design, by grade.
type tally struct {
	errors, void, judged int
	halved               bool   // rules may be missing, see halved
	found, unproven      [3]int // by verdict.Grade.Rank
}

func (p *page) tally(d *lint.DesignResult) tally {
	t := tally{errors: len(d.Problems), halved: p.halved}
	for i := range d.Verdicts {
		v := &d.Verdicts[i]
		grade := min(v.Grade.Rank(), 2)
		switch v.Outcome {
		case verdict.Breaks:
			t.found[grade]++
		case verdict.Unproven:
			t.unproven[grade]++
		case verdict.Void:
			t.void++
		case verdict.DoesNotApply:
			continue
		}
		t.judged++
	}
	return t
}

// rank is 0 where something could not be read or nothing was judged, then by
// the worst grade: 1 stop, 2 fix, 3 advise, 4 nothing.
func (t tally) rank() int {
	if t.errors > 0 || t.void > 0 || t.judged == 0 || t.halved {
		return 0
	}
	for grade := range t.found {
		if t.found[grade]+t.unproven[grade] > 0 {
			return grade + 1
		}
	}
	return 4
}

// worst counts the findings of the worst grade that there is one of.
func (t tally) worst() int {
	for grade := range t.found {
		if n := t.found[grade] + t.unproven[grade]; n > 0 {
			return n
		}
	}
	return 0
}

// verdictLine says in one sentence what to make of the design.
func (t tally) verdictLine() (text string, with ink) {
	names := [3][2]string{{"stop", "stops"}, {"fix", "fixes"}, {"point of advice", "points of advice"}}
	var parts []string
	for grade, name := range names {
		for _, c := range []struct {
			n    int
			what string
		}{{t.found[grade], "found"}, {t.unproven[grade], "unproven"}} {
			if c.n > 0 {
				parts = append(parts, fmt.Sprintf("%s %s", count(c.n, name[0], name[1]), c.what))
			}
		}
	}
	if t.void > 0 {
		parts = append(parts, count(t.void, "judgement", "judgements")+" void")
	}
	if t.errors > 0 {
		parts = append(parts, count(t.errors, "error", "errors")+" in what was read")
	}
	if t.halved {
		parts = append(parts, "see the errors above")
	}
	all := strings.Join(parts, ", ") + "."
	switch {
	case t.found[0]+t.unproven[0] > 0:
		return "NOT TO BE ENERGIZED: " + all, inkStop
	case t.errors > 0 || t.void > 0 || t.halved:
		return "NOT JUDGED IN FULL: " + all, inkFix
	case t.found[1]+t.unproven[1] > 0:
		return "To be put right before sign-off: " + all, inkFix
	case t.found[2]+t.unproven[2] > 0:
		return "Nothing that stops it; worth knowing: " + all, plain
	case t.judged == 0:
		return "Not judged: no rule in force applies to what this design holds.", inkFix
	}
	return "Nothing found against it.", plain
}

// design writes one design and reports whether it ended in footnotes.
func (p *page) design(d *lint.DesignResult) bool {
	p.head(d)
	text, with := p.tally(d).verdictLine()
	p.line().wrap(text, with)
	if len(d.Problems) > 0 {
		p.blank()
		p.errors(d.Problems)
	}
	for i, v := range findings(d.Verdicts) {
		p.blank()
		p.item(i+1, v)
	}
	p.headroom(d.Verdicts)
	return p.footnotes(d)
}

// head names the design at the left and its file at the right.
func (p *page) head(d *lint.DesignResult) {
	name := strings.ToUpper(d.Name)
	if d.Revision != "" {
		name += ", revision " + d.Revision
	}
	p.pair(p.line(), name, d.File)
}

// pair puts one text at the left and one at the right, on two lines where one
// does not hold both.
func (p *page) pair(l *line, left, right string) {
	if left = strings.TrimPrefix(left, ", "); left == "" {
		left = right
		right = ""
	}
	l.put(left, plain)
	if right != "" {
		if gap := p.width - l.at - columns(Escape(right)); gap < 1 {
			l.end()
			l = p.line()
		}
		l.right(p.width, right, plain)
	}
	l.end()
}

// listing closes a run over many designs, so that its end tells all of them.
func (p *page) listing(designs []*lint.DesignResult) {
	p.line().put(fmt.Sprintf("%d DESIGNS, worst first", len(designs)), plain).end()
	for _, d := range designs {
		text, with := p.tally(d).verdictLine()
		l := p.line().put(d.File, plain)
		if l.at >= 30 || p.narrow() {
			l.end()
			l = p.line().to(2)
		} else {
			l.to(31)
		}
		l.wrap(text, with)
	}
}

func count(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}
