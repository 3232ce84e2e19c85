package report

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"stringline/lint/compare"
	"stringline/lint/verdict"
	"stringline/schema/source"
)

// CompareOptions says how much of a comparison is shown.
type CompareOptions struct {
	Page
	All bool // every limit and fact that moved, however many there are
}

// manyRows is how many rows of one table are shown where not all are asked for.
const manyRows = 12

// Compare writes a comparison for people: what judges otherwise, then design by
// design what got worse, what turned, headroom lost and won, what got better, what
// was written otherwise, and the facts that moved with what moved them.
func Compare(w io.Writer, c *compare.Comparison, opts CompareOptions) error {
	p := &comparePage{page: newPage(opts.Page), all: opts.All}
	p.pair(p.line(), "COMPARED", "was "+sideName(&c.Was)+", now "+sideName(&c.Now))
	text, with := comparisonLine(c)
	p.line().wrap(text, with)
	p.unread("In what was", c.Was.Problems)
	p.unread("In what is now", c.Now.Problems)
	p.books(c.Books)
	for _, d := range worstDesigns(c.Designs) {
		if d.State != compare.Same {
			p.blank()
			p.compared(d, len(c.Designs) > 1)
		}
	}
	p.blank()
	if len(c.Designs) == 0 && c.Exit == 2 {
		p.caution()
		return p.flush(w)
	}
	p.line().wrap(comparisonCounts(c), plain)
	p.line().wrap("Both sides are judged by this program, as on "+c.Date+".", plain)
	p.caution()
	return p.flush(w)
}

type comparePage struct {
	*page
	all bool
}

// sideName names a side; of a commit the first digits stand beside what it was
// called.
func sideName(s *compare.Side) string {
	const short = 10
	if s.Commit == "" || strings.HasPrefix(s.Commit, s.Label) {
		return s.Label
	}
	return s.Label + " (" + s.Commit[:min(short, len(s.Commit))] + ")"
}

// comparisonLine says in one sentence what to make of the whole.
func comparisonLine(c *compare.Comparison) (string, ink) {
	s := &c.Summary
	worse := worseGrades(c.Designs...)
	switch {
	case worse != "" && c.Exit == 2:
		return "GOT WORSE, and not all could be compared: " + worse + ".", inkStop
	case worse != "":
		return "GOT WORSE: " + worse + ".", worseInk(c.Designs...)
	case c.Exit == 2:
		if len(c.Designs) == 0 {
			return "NOT COMPARED: see the errors below.", inkFix
		}
		return "NOT COMPARED IN FULL: see the errors below.", inkFix
	case s.Changed+s.New+s.Gone == 0 && len(c.Books) == 0:
		return "Nothing moved.", plain
	}
	return "Nothing got worse.", plain
}

// worseGrades counts by grade the verdicts that got worse: "2 stops, 1 fix".
func worseGrades(designs ...compare.Design) string {
	names := [3][2]string{{"stop", "stops"}, {"fix", "fixes"}, {"point of advice", "points of advice"}}
	var counts [3]int
	for i := range designs {
		for j := range designs[i].Turns {
			if t := &designs[i].Turns[j]; t.Direction == compare.Worse {
				counts[min(t.Grade().Rank(), 2)]++
			}
		}
	}
	var parts []string
	for i, n := range counts {
		if n > 0 {
			parts = append(parts, count(n, names[i][0], names[i][1]))
		}
	}
	return strings.Join(parts, ", ")
}

func worseInk(designs ...compare.Design) ink {
	for i := range designs {
		for j := range designs[i].Turns {
			if t := &designs[i].Turns[j]; t.Direction == compare.Worse && t.Grade() == verdict.Stop {
				return inkStop
			}
		}
	}
	return inkFix
}

// worstDesigns orders designs: those with errors, then by the worst that became
// worse, then as they came.
func worstDesigns(all []compare.Design) []*compare.Design {
	order := make([]*compare.Design, len(all))
	for i := range all {
		order[i] = &all[i]
	}
	rank := func(d *compare.Design) int {
		switch {
		case len(d.Problems)+len(d.WasProblems) > 0:
			return -1
		case len(d.Turns) > 0 && d.Turns[0].Direction == compare.Worse:
			return d.Turns[0].Grade().Rank()
		}
		return 4
	}
	slices.SortStableFunc(order, func(a, b *compare.Design) int { return rank(a) - rank(b) })
	return order
}

func (p *comparePage) unread(where string, problems source.Problems) {
	if len(problems) == 0 {
		return
	}
	p.blank()
	p.line().put(where, plain).end()
	p.errors(problems)
}

// books writes what became of the codebooks.
func (p *comparePage) books(list []compare.BookChange) {
	if len(list) == 0 {
		return
	}
	p.blank()
	p.line().wrap(fmt.Sprintf("WHAT JUDGES IS NOT THE SAME, %s", count(len(list), "codebook", "codebooks")), inkFix)
	for i := range list {
		p.line().put("Codebook", plain).to(9).wrap(list[i].Name, plain)
		for _, words := range bookWords(&list[i]) {
			p.line().to(9).wrap(words, plain)
		}
	}
}

// bookWords says what became of one codebook, a sentence each.
func bookWords(b *compare.BookChange) []string {
	switch {
	case b.Was == nil:
		return []string{fmt.Sprintf("newly in force, version %s: %s", b.Now.Version, count(len(b.Now.Rules), "rule", "rules"))}
	case b.Now == nil:
		return []string{fmt.Sprintf("not in force any more: its %s judge nothing now", count(len(b.Was.Rules), "rule", "rules"))}
	}
	var list []string
	say := func(what, was, now string, wasAt, at source.Range) {
		place := func(at source.Range) string {
			if !at.Valid() {
				return ""
			}
			return ", at " + at.String()
		}
		list = append(list, fmt.Sprintf("%s: was %s%s, now %s%s", what, was, place(wasAt), now, place(at)))
	}
	none := source.Range{}
	if b.Was.Version != b.Now.Version {
		say("version", b.Was.Version, b.Now.Version, none, none)
	}
	if b.Was.Edition != b.Now.Edition {
		say("edition", orNone(b.Was.Edition), orNone(b.Now.Edition), none, none)
	}
	if b.Was.Digest != b.Now.Digest {
		say("content", b.Was.Digest, b.Now.Digest, none, none)
	}
	for i := range b.Parameters {
		x := &b.Parameters[i]
		was, now := "not a parameter", "no parameter any more"
		var wasAt, at source.Range
		if x.Was != nil {
			was, wasAt = parameterText(x.Was), x.Was.SetAt
			if !wasAt.Valid() {
				was += " (the codebook's own)"
			}
		}
		if x.Now != nil {
			now, at = parameterText(x.Now), x.Now.SetAt
			if !at.Valid() {
				now += " (the codebook's own)"
			}
		}
		say("parameter "+x.Name, was, now, wasAt, at)
	}
	for _, g := range b.Grades {
		say("grade of "+g.Rule, string(g.Was), string(g.Now), g.WasAt, g.At)
	}
	if len(b.RulesNew) > 0 {
		list = append(list, "new rules: "+strings.Join(b.RulesNew, ", "))
	}
	if len(b.RulesGone) > 0 {
		list = append(list, "rules taken out: "+strings.Join(b.RulesGone, ", "))
	}
	return list
}

func orNone(text string) string {
	if text == "" {
		return "none"
	}
	return text
}

// designNames gives a design's name and file, with what they were.
func designNames(d *compare.Design) (name, file string) {
	name, file = d.Name, d.File
	if d.State == compare.Gone {
		return strings.ToUpper(d.WasName), d.WasFile
	}
	name = strings.ToUpper(name)
	if d.WasName != d.Name && d.WasName != "" {
		name += ", was " + strings.ToUpper(d.WasName)
	}
	switch {
	case d.Revision == "" && d.WasRevision == "", d.State == compare.New && d.Revision == "":
	case d.Revision == d.WasRevision || d.State == compare.New:
		name += ", revision " + d.Revision
	default:
		name += ", revision " + orNone(d.Revision) + ", was " + orNone(d.WasRevision)
	}
	if d.WasFile != "" && d.WasFile != d.File {
		file += ", was " + d.WasFile
	}
	return name, file
}

// compared writes one design. One among several says what to make of it; of a
// single one the head of the page has said it.
func (p *comparePage) compared(d *compare.Design, several bool) {
	name, file := designNames(d)
	p.pair(p.line(), name, file)
	if text, with := designLine(d); several || d.State != compare.Changed || len(d.Turns)+len(d.Facts) == 0 {
		p.line().wrap(text, with)
	}
	p.unread("In what was", d.WasProblems)
	p.unread("In what is now", d.Problems)
	by := byDirection(d.Turns)
	p.turned("GOT WORSE", by[compare.Worse], true)
	p.turned("TURNED OTHERWISE", by[compare.Turned], false)
	p.margins("HEADROOM LOST, most first", by[compare.Lost])
	p.margins("HEADROOM WON, most first", by[compare.Won])
	p.turned("GOT BETTER", by[compare.Better], false)
	p.written(d)
	p.moved(d)
}

func byDirection(all []compare.Turn) map[compare.Direction][]*compare.Turn {
	by := map[compare.Direction][]*compare.Turn{}
	for i := range all {
		by[all[i].Direction] = append(by[all[i].Direction], &all[i])
	}
	return by
}

// designLine says in one sentence what became of a design.
func designLine(d *compare.Design) (string, ink) {
	worse := worseGrades(*d)
	switch {
	case d.State == compare.Gone:
		return "The design is gone.", plain
	case d.State == compare.New && len(d.Problems) > 0:
		return "NOT READ IN FULL: the design is new; see the errors below.", inkFix
	case d.State == compare.New && worse == "":
		return "The design is new: nothing found against it.", plain
	case d.State == compare.New:
		return "The design is new. Found against it: " + worse + ".", worseInk(*d)
	case worse != "":
		return "GOT WORSE: " + worse + ".", worseInk(*d)
	case len(d.Problems)+len(d.WasProblems) > 0:
		return "NOT COMPARED IN FULL: see the errors below.", inkFix
	case d.Moved && len(d.Turns)+len(d.Facts)+len(d.Changes)+len(d.Renamed) == 0:
		return "The file has another name; nothing else moved.", plain
	case len(d.Turns)+len(d.Facts) == 0:
		return "Written otherwise; no fact moved and no verdict turned.", plain
	}
	return "Nothing got worse.", plain
}

// comparisonCounts says in one sentence what was done.
func comparisonCounts(c *compare.Comparison) string {
	s := &c.Summary
	same := s.Designs - s.Changed - s.New - s.Gone
	words := count(s.Designs, "design", "designs") + " compared"
	if s.Designs > 1 || same > 0 {
		words += fmt.Sprintf(": %d changed, %d the same, %d new, %d gone", s.Changed, same, s.New, s.Gone)
	}
	words += fmt.Sprintf(". %s worse, %d better, %d turned otherwise; %s lost headroom, %d won some.",
		count(s.Worse, "verdict", "verdicts"), s.Better, s.Turned, count(s.Lost, "limit", "limits"), s.Won)
	if s.Held > 0 {
		words += fmt.Sprintf(" Of %s the figures moved and the distance did not.", count(s.Held, "limit", "limits"))
	}
	if s.Came+s.Left > 0 {
		words += fmt.Sprintf(" %s without a finding came with what is new, %d left with what is gone.", count(s.Came, "verdict", "verdicts"), s.Left)
	}
	if s.Facts > 0 {
		words += " " + count(s.Facts, "fact", "facts") + " moved."
	}
	return words
}
