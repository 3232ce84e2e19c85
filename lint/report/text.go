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
	return whole(NewText(w, opts), r)
}

// NewText is [Text] for a run that goes on. The worst design comes first, so
// nothing is written before the end; of each design its text is kept.
func NewText(w io.Writer, opts Page) Sink {
	return &textSink{w: w, opts: opts}
}

type textSink struct {
	w       io.Writer
	opts    Page
	designs []*designText
}

// designText is one design as the text shows it: all but the sentence that says
// what to make of it, which waits for what was wrong with no one design.
type designText struct {
	file       string
	head, rest string
	footnotes  bool // rest ends in them
	waivers    bool // the day decided about some
	tally      tally
}

func (s *textSink) Design(d *lint.DesignResult) error {
	kept := &designText{file: d.File, tally: tallyOf(d)}
	p := newPage(s.opts)
	p.head(d)
	kept.head = p.take()
	kept.footnotes = p.design(d)
	kept.rest = p.take()
	p.closing(d, strings.Count(kept.head+kept.rest, "\n"))
	kept.footnotes = kept.footnotes && p.b.Len() == 0
	kept.rest += p.take()
	for i := range d.Verdicts {
		kept.waivers = kept.waivers || d.Verdicts[i].Waiver != nil
	}
	s.designs = append(s.designs, kept)
	return nil
}

func (s *textSink) End(r *lint.Result) error {
	p := newPage(s.opts)
	if len(r.Problems) > 0 {
		p.errors(r.Problems)
		p.blank()
	}
	halved, waivers := halved(r.Problems), false
	for _, d := range s.designs {
		d.tally.halved = halved
		waivers = waivers || d.waivers
	}
	worstFirst(s.designs)
	for i, d := range s.designs {
		p.b.WriteString(d.head)
		text, with := d.tally.verdictLine()
		p.line().wrap(text, with)
		p.b.WriteString(d.rest)
		if last := i == 0 && len(s.designs) == 1; !last || !d.footnotes {
			p.blank()
		}
		if len(s.designs) == 1 {
			break // whose lines are counted below
		}
		if err := p.flush(s.w); err != nil {
			return err
		}
	}
	if len(s.designs) > 1 {
		p.listing(s.designs)
		p.blank()
	}
	if len(s.designs) > 0 {
		if waivers {
			p.line().put("Date", plain).to(9).wrap(r.Date+", which decides the ends of waivers", plain)
		}
		if len(s.designs) == 1 {
			p.again(s.designs[0])
		}
		p.counts(&r.Summary)
		p.baseline(r.Baseline)
		p.caution()
	}
	return p.flush(s.w)
}

// longPage is how many lines a reader of a terminal can be taken to see at once.
const longPage = 50

// again repeats at the foot of a long page what its head says about the design:
// the head has scrolled away.
func (p *page) again(d *designText) {
	if strings.Count(p.b.String(), "\n") < longPage {
		return
	}
	text, with := d.tally.verdictLine()
	p.line().wrap(text, with)
}

// halved reports problems of no one design that may have kept rules from
// judging: a workshop file or a codebook that could not be read. A path that
// leads nowhere, a run that was called off, or a baseline takes nothing from the
// designs that were judged.
func halved(problems source.Problems) bool {
	return slices.ContainsFunc(problems, func(p source.Problem) bool {
		return !slices.Contains([]string{"path", "no_design", "interrupted", "baseline"}, p.Kind)
	})
}

// worstFirst orders designs: those that could not be judged in full, then by
// their worst finding and how many there are, then as they came.
func worstFirst(designs []*designText) {
	slices.SortStableFunc(designs, func(a, b *designText) int {
		return cmp.Or(
			cmp.Compare(a.tally.rank(), b.tally.rank()),
			-cmp.Compare(a.tally.worst(), b.tally.worst()),
		)
	})
}

// tally counts what stands against a design, by grade.
type tally struct {
	errors, void, judged int
	held                 int    // findings that a baseline accepts
	halved               bool   // rules may be missing, see halved
	found, unproven      [3]int // by verdict.Grade.Rank
}

func tallyOf(d *lint.DesignResult) tally {
	t := tally{errors: len(d.Problems)}
	for i := range d.Verdicts {
		v := &d.Verdicts[i]
		grade := min(v.Grade.Rank(), 2)
		if v.Held() {
			t.held++
			t.judged++
			continue
		}
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
	if t.held > 0 {
		parts = append(parts, count(t.held, "accepted finding", "accepted findings"))
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
	case t.held > 0:
		return "Nothing found but what was accepted: " + all, plain
	case t.judged == 0:
		return "Not judged: no rule in force applies to what this design holds.", inkFix
	}
	return "Nothing found against it.", plain
}

// design writes what is told of one design below its head, and reports whether it
// ended in footnotes.
func (p *page) design(d *lint.DesignResult) bool {
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
	if l.at+columns(Escape(left)) > p.width {
		l.wrap(left, plain)
		l = p.line()
	} else {
		l.put(left, plain)
	}
	if right != "" {
		if gap := p.width - l.at - columns(Escape(right)); gap < 1 && l.written() {
			l.end()
			l = p.line()
		}
		if columns(Escape(right)) > p.width { // a list: it may be broken
			l.to(p.labels()).wrap(right, plain)
			return
		}
		l.right(p.width, right, plain)
	}
	if l.written() {
		l.end()
	}
}

// listing closes a run over many designs, so that its end tells all of them.
func (p *page) listing(designs []*designText) {
	p.line().put(fmt.Sprintf("%d DESIGNS, worst first", len(designs)), plain).end()
	for _, d := range designs {
		text, with := d.tally.verdictLine()
		l := p.line().put(d.file, plain)
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
