// Package compare tells what a change did: it lays two runs of the pipeline
// beside each other and gives the facts that moved, the verdicts that turned, and
// the headroom won and lost.
//
// Use [Runs]. It computes no fact and judges nothing by itself: everything comes
// from the two results. Designs are paired by name, their blocks by label; a block
// that has another label and is otherwise alike counts as renamed, and where a
// block stands in a file does not count at all.
package compare

import (
	"cmp"
	"reflect"
	"slices"

	"stringline/lint"
	"stringline/lint/facts"
	"stringline/lint/verdict"
	"stringline/schema/source"
)

// Run is one side of a comparison.
type Run struct {
	Label  string // how people call it: a path, a commit as it was named
	Commit string // the commit's full name, "" where the side is no commit
	Result *lint.Result
	// Name gives the name by which a design of this side, called as it is shown,
	// is paired with one of the other; nil: as it is shown.
	Name func(file string) string
	// MayLack says that this side may hold no design: then all of the other side's
	// are new, or gone.
	MayLack bool
}

// Options says what to compare.
type Options struct {
	Was, Now Run
	// RejectFrom is the least grade at which what got worse makes the comparison
	// end with 1.
	RejectFrom verdict.Grade
	// HeadroomBelow is a share of the limit (0.05 is 5 %). A limit that is still
	// met counts as worse where its headroom fell and is below that now; nil:
	// never.
	HeadroomBelow *float64
}

// State says which side has a design.
type State string

// The states. Same means that nothing moved, whatever became of the text.
const (
	Changed State = "changed"
	Same    State = "same"
	New     State = "new"
	Gone    State = "gone"
)

// Comparison is all that is told about two runs.
type Comparison struct {
	Version  string
	Date     string // decides the ends of waivers, on both sides
	Was, Now Side
	Books    []BookChange // by name
	Designs  []Design     // by file
	Summary  Summary
	Exit     int // 0, 1 something got worse, 2 something could not be read

	wasBooks, nowBooks []lint.BookInUse
	reject             verdict.Grade
}

// Side is one side as it was compared.
type Side struct {
	Label, Commit string
	Problems      source.Problems // of no one design
}

// Summary counts designs, verdicts by [Direction], and facts.
type Summary struct {
	Designs, Changed, New, Gone            int
	Worse, Better, Turned, Lost, Won, Held int
	Came, Left                             int
	Facts                                  int // computed ones that moved
}

// Design is what a change did to one design.
type Design struct {
	State                 State
	Moved                 bool   // its file has another name, or stands elsewhere
	File, WasFile         string // as shown; "" on the side that lacks it
	Name, WasName         string
	Revision, WasRevision string
	Renamed               []Rename
	Changes               []Change // what was written otherwise, in the order of the files
	Turns                 []Turn   // verdicts that differ in anything, worst first
	Facts                 []Fact   // that moved, worst first
	Problems, WasProblems source.Problems
}

// Rename is a block that has another label, or stands in a renamed one.
type Rename struct {
	Was, Now string // ids: "charger.main"
	At       source.Range
}

// Runs compares two runs.
func Runs(o Options) *Comparison {
	c := &Comparison{
		wasBooks: o.Was.Result.Books, nowBooks: o.Now.Result.Books, reject: o.RejectFrom,
		Version: o.Now.Result.Version, Date: o.Now.Result.Date,
		Was: o.Was.side(len(o.Now.Result.Designs)), Now: o.Now.side(len(o.Was.Result.Designs)),
		Books: books(o.Was.Result.Books, o.Now.Result.Books),
	}
	for _, p := range pairs(&o.Was, &o.Now) {
		c.Designs = append(c.Designs, compareDesigns(p, &o))
	}
	c.count()
	return c
}

// Join puts comparisons of parts of the same two sides together, so that a run over
// thousands of designs keeps only what it tells of each. There is at least one.
func Join(parts ...*Comparison) *Comparison {
	c := *parts[0]
	for _, p := range parts[1:] {
		c.Was.Problems, c.Now.Problems = append(c.Was.Problems, p.Was.Problems...), append(c.Now.Problems, p.Now.Problems...)
		c.wasBooks, c.nowBooks = append(c.wasBooks, p.wasBooks...), append(c.nowBooks, p.nowBooks...)
		c.Designs = append(c.Designs, p.Designs...)
	}
	for _, list := range []*source.Problems{&c.Was.Problems, &c.Now.Problems} {
		list.Sort()
		*list = slices.Compact(*list)
	}
	c.Books = books(distinct(c.wasBooks), distinct(c.nowBooks))
	c.count()
	return &c
}

// distinct keeps one of each codebook as it was in force.
func distinct(all []lint.BookInUse) []lint.BookInUse {
	var kept []lint.BookInUse
	for i := range all {
		if !slices.ContainsFunc(kept, func(b lint.BookInUse) bool { return reflect.DeepEqual(b, all[i]) }) {
			kept = append(kept, all[i])
		}
	}
	return kept
}

// side tells about a run. Where it may lack designs and the other side has some,
// that it has none is no problem.
func (r *Run) side(others int) Side {
	s := Side{Label: r.Label, Commit: r.Commit}
	for _, p := range r.Result.Problems {
		if !(r.MayLack && p.Kind == "no_design" && others > 0) {
			s.Problems = append(s.Problems, p)
		}
	}
	return s
}

// pair is a design on both sides; nil where one lacks it.
type pair struct {
	was, now *lint.DesignResult
	moved    bool // the file has another name on the newer side
}

// pairs finds which designs belong together: those of one name; then, of those
// that are left, those whose design blocks have the same label, where it is the
// only such one on either side: a file that has moved.
func pairs(was, now *Run) []pair {
	name := func(r *Run, d *lint.DesignResult) string {
		if r.Name == nil {
			return d.File
		}
		return r.Name(d.File)
	}
	all := make([]pair, 0, len(now.Result.Designs))
	left := map[string][]*lint.DesignResult{}
	for i := range was.Result.Designs {
		d := &was.Result.Designs[i]
		left[name(was, d)] = append(left[name(was, d)], d)
	}
	var alone []*lint.DesignResult
	for i := range now.Result.Designs {
		d := &now.Result.Designs[i]
		key := name(now, d)
		if of := left[key]; len(of) > 0 {
			all = append(all, pair{was: of[0], now: d})
			left[key] = of[1:]
			continue
		}
		alone = append(alone, d)
	}
	byLabel := map[string][]*lint.DesignResult{}
	var gone []*lint.DesignResult
	for i := range was.Result.Designs {
		d := &was.Result.Designs[i]
		if slices.Contains(left[name(was, d)], d) {
			gone = append(gone, d)
			byLabel[d.Name] = append(byLabel[d.Name], d)
		}
	}
	labels := map[string]int{}
	for _, d := range alone {
		labels[d.Name]++
	}
	moved := map[*lint.DesignResult]bool{}
	for _, d := range alone {
		if of := byLabel[d.Name]; d.Name != "" && len(of) == 1 && labels[d.Name] == 1 {
			all = append(all, pair{of[0], d, true})
			moved[of[0]] = true
			continue
		}
		all = append(all, pair{now: d})
	}
	for _, d := range gone {
		if !moved[d] {
			all = append(all, pair{was: d})
		}
	}
	return all
}

func compareDesigns(p pair, o *Options) Design {
	was, now := p.was, p.now
	d := Design{State: Changed, Moved: p.moved}
	if now != nil {
		d.File, d.Name, d.Revision, d.Problems = now.File, now.Name, now.Revision, now.Problems
	}
	if was != nil {
		d.WasFile, d.WasName, d.WasRevision, d.WasProblems = was.File, was.Name, was.Revision, was.Problems
	}
	switch {
	case was == nil:
		d.State = New
		d.Turns = turns(nil, now, &names{}, o)
		return d
	case now == nil:
		d.State = Gone
		return d
	}
	n := &names{}
	if was.System != nil && now.System != nil {
		n = match(was.System.Design(), now.System.Design())
		d.Renamed = n.renamed
		d.Changes = changes(was.System.Design(), now.System.Design(), n)
	}
	d.Turns = turns(was, now, n, o)
	// The same texts give the same facts: none is derived for nothing.
	if was.System != nil && now.System != nil && was.Digest != now.Digest {
		d.Facts = moved(was.System, now.System, n, d.Changes, d.Turns)
	}
	if len(d.Renamed)+len(d.Changes)+len(d.Turns)+len(d.Facts) == 0 && !d.Moved &&
		d.Name == d.WasName && len(d.Problems)+len(d.WasProblems) == 0 {
		d.State = Same
	}
	return d
}

// count orders the designs and fills in the summary and the exit status.
func (c *Comparison) count() {
	slices.SortStableFunc(c.Designs, func(a, b Design) int {
		return cmp.Or(cmp.Compare(cmp.Or(a.File, a.WasFile), cmp.Or(b.File, b.WasFile)), cmp.Compare(a.WasFile, b.WasFile))
	})
	c.Summary, c.Exit = Summary{}, 0
	s := &c.Summary
	unread := len(c.Was.Problems)+len(c.Now.Problems) > 0 || len(c.Designs) == 0
	worse := false
	for i := range c.Designs {
		d := &c.Designs[i]
		s.Designs++
		for j := range d.Facts {
			if !d.Facts[j].Attribute {
				s.Facts++
			}
		}
		switch d.State {
		case Changed:
			s.Changed++
		case New:
			s.New++
		case Gone:
			s.Gone++
		}
		unread = unread || len(d.Problems)+len(d.WasProblems) > 0
		for j := range d.Turns {
			t := &d.Turns[j]
			switch t.Direction {
			case Worse:
				s.Worse++
				worse = worse || t.Grade().Rank() <= c.reject.Rank()
			case Better:
				s.Better++
			case Turned:
				s.Turned++
			case Lost:
				s.Lost++
			case Won:
				s.Won++
			case Held:
				s.Held++
			case Came:
				s.Came++
			case Left:
				s.Left++
			}
			unread = unread || t.Now != nil && t.Now.Outcome == verdict.Void
		}
	}
	switch {
	case unread:
		c.Exit = 2
	case worse:
		c.Exit = 1
	}
}

// Fact is one fact that moved.
type Fact struct {
	ID, WasID string
	Was, Now  facts.Fact
	Over      string // of a series: the unit of its axis
	Attribute bool   // it is written in a file, not computed
	// Causes are the ids of the blocks that were written otherwise and that the
	// fact rests on; sorted. Empty where none could be found.
	Causes []string
	// Judged says that a verdict that moved is about this very fact.
	Judged bool

	rank int     // worst first
	size float64 // of the move, as a share
}
