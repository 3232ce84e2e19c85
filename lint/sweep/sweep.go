// Package sweep varies one or two attributes of a design, parameters of codebooks or
// answers to their questions over a range and tells what becomes of facts and
// verdicts, and at which value each rule turns.
//
// Use [ParseOver] for what is varied and [Run] on an open [lint.Bench]. Each value
// is written into the text of the design, or of the parts file that the attribute
// stands in, where it stands or would stand, and the whole is judged as a file
// with that text would be; a parameter is set as workshop.hcl would set it. Where a verdict differs between two neighboring points,
// the value at which it turns is found by bisection, to a hundred-thousandth of
// the range; between two points that agree nothing is looked for.
package sweep

import (
	"context"
	"fmt"
	"maps"
	"math"
	"slices"
	"sync"
	"sync/atomic"

	"stringline/lint"
	"stringline/lint/facts"
	"stringline/lint/verdict"
	"stringline/schema/rewrite"
	"stringline/schema/source"
)

// Options says what is varied and what is told.
type Options struct {
	Over  []Over   // one or two
	Facts []string // ids; nil takes those facts of limits that move
	// WithoutYear leaves out what rests on a year of sun, which takes most of the
	// time.
	WithoutYear bool
	Workers     int
	Progress    func(done, total int) // may be nil; called from several goroutines
}

// Result is what was found.
type Result struct {
	Base  *lint.DesignResult
	Axes  []*Axis
	Facts []Column
	Rows  []Row // the first axis turns fastest
	Turns []Turn
	// Throughout are the findings that are there, and alike, at every point.
	Throughout  []verdict.Verdict
	WithoutYear bool
	// NotPut are the rules that could not be put for want of a year.
	NotPut []string
}

// Column is one fact that is told.
type Column struct {
	ID, Unit, Means string
	LimitMoves      bool // what a rule allows it is not the same at every point
}

// Row is one point of the sweep.
type Row struct {
	At       []int // which point of each axis
	Values   map[string]facts.Fact
	Limits   map[string]float64 // of facts that a rule limits: the nearest limit, in the fact's unit
	Findings [3]int             // by verdict.Grade.Rank
	Problems source.Problems    // why it could not be read whole

	judged map[string]*judgement
}

// judgement is what of a verdict is kept of every point.
type judgement struct {
	rule, about, which, title string
	grade                     verdict.Grade
	outcome                   verdict.Outcome
	headroom                  *float64
	limited                   string           // the fact that it holds against a limit; "" for none
	finding                   *verdict.Verdict // whole, where it is one
	awaits                    bool             // the year that was left out
}

// Turn is where a rule's verdict on a subject turns.
type Turn struct {
	Rule, About, Which, Title string
	Grade                     verdict.Grade
	Axis                      int // of Axes: along which it turns
	Other                     int // the point of the other axis; -1 where there is none
	Before, After             verdict.Outcome
	// Low and High enclose the turning point: at Low the verdict is Before, at High
	// After. Where the axis has values between its points they are no further apart
	// than its tolerance.
	Low, High Point
	Limited   string // the fact that the rule holds against a limit; "" for none
}

// Met gives the end of the turn at which the rule is met, else the lower one.
func (t *Turn) Met() Point {
	if t.After == verdict.Meets {
		return t.High
	}
	return t.Low
}

// Key identifies the verdict: rule|about|which.
func (t *Turn) Key() string { return t.Rule + "|" + t.About + "|" + t.Which }

// sweeper is one sweep.
type sweeper struct {
	bench   *lint.Bench
	options Options
	base    *lint.DesignResult
	axes    []*Axis
	texts   map[string]*rewrite.Document // by file
	samples map[string]*judgement        // the first of each key
	place   map[string]int               // of each key among outcomes

	mutex sync.Mutex
	tried map[string][]verdict.Outcome // outcomes between points, by what was tried
}

// Run sweeps. The error is the context's, or says what of the options cannot be
// done on this design.
func Run(ctx context.Context, bench *lint.Bench, o Options) (*Result, error) {
	if len(o.Over) < 1 || len(o.Over) > 2 {
		return nil, fmt.Errorf("a sweep varies one value or two, not %d", len(o.Over))
	}
	s := &sweeper{bench: bench, options: o, texts: map[string]*rewrite.Document{}, samples: map[string]*judgement{}, place: map[string]int{}, tried: map[string][]verdict.Outcome{}}
	var err error
	if s.base, err = bench.Judge(ctx, lint.Trial{WithoutYear: true}); err != nil {
		return nil, err
	}
	if len(s.base.Problems) > 0 {
		return nil, fmt.Errorf("%s has errors, which it would have at every point:\n%w", s.base.File, s.base.Problems)
	}
	if problems := bench.Problems(); len(problems) > 0 {
		return nil, problems
	}
	if err := s.settle(); err != nil {
		return nil, err
	}
	rows, err := s.rows(ctx)
	if err != nil {
		return nil, err
	}
	r := &Result{Base: s.base, Axes: s.axes, Rows: rows, WithoutYear: o.WithoutYear}
	s.sample(rows)
	if r.Turns, err = s.turns(ctx, rows); err != nil {
		return nil, err
	}
	r.Throughout = s.throughout(rows)
	for _, key := range slices.Sorted(maps.Keys(s.samples)) {
		if v := s.samples[key]; v.awaits && !slices.Contains(r.NotPut, v.rule) {
			r.NotPut = append(r.NotPut, v.rule)
		}
	}
	r.Facts = s.columns(rows, r.Turns)
	return r, nil
}

// settle finds the attributes and opens the files that they stand in.
func (s *sweeper) settle() error {
	total := 1
	for _, o := range s.options.Over {
		a, err := s.axis(o)
		if err != nil {
			return err
		}
		for _, other := range s.axes {
			if other.at == a.at {
				return fmt.Errorf("%s and %s are the same value", other.ID, a.ID)
			}
		}
		if total *= len(a.Points); total > mostTrials {
			return fmt.Errorf("%d points together; at most %d: take larger steps", total, mostTrials)
		}
		s.axes = append(s.axes, a)
		if a.at.parameter != "" || s.texts[a.at.file] != nil {
			continue
		}
		for _, f := range s.bench.Design().Files {
			if f.Name != a.at.file {
				continue
			}
			d, problems := rewrite.Open(f.Name, f.Text)
			if len(problems) > 0 {
				return problems
			}
			s.texts[a.at.file] = d
		}
		if s.texts[a.at.file] == nil {
			return fmt.Errorf("%s stands in no file of the design", a.ID)
		}
	}
	for _, id := range s.options.Facts {
		if f, ok := s.base.System.Fact(id); !ok {
			return fmt.Errorf("there is no fact %q%s", id, s.nearFact(id))
		} else if f.Kind == facts.Series || f.Kind == facts.List {
			return fmt.Errorf("%s is a list of values; a sweep shows single ones", id)
		}
	}
	return nil
}

func (s *sweeper) nearFact(id string) string {
	var known []string
	for _, c := range facts.Collections() {
		for _, about := range s.base.System.Subjects(c.Name) {
			for _, e := range c.Entries {
				known = append(known, about.ID()+"."+e.Name)
			}
		}
	}
	if near := source.Nearest(id, known); near != "" {
		return fmt.Sprintf("; did you mean %q?", near)
	}
	return "; stringline facts lists them"
}

// trial judges with one value on each axis.
func (s *sweeper) trial(ctx context.Context, at []Point, withoutYear bool) (*lint.DesignResult, error) {
	docs := map[string]*rewrite.Document{}
	parameters := map[string]string{}
	for i, a := range s.axes {
		if a.at.parameter != "" {
			parameters[a.at.parameter] = at[i].Text
			continue
		}
		d := docs[a.at.file]
		if d == nil {
			d = s.texts[a.at.file].Fresh()
			docs[a.at.file] = d
		}
		if err := a.write(d, at[i]); err != nil {
			return nil, fmt.Errorf("setting %s: %w", a.ID, err)
		}
	}
	texts := map[string][]byte{}
	for file, d := range docs {
		texts[file] = d.Splice()
	}
	return s.bench.Judge(ctx, lint.Trial{Texts: texts, Parameters: parameters, WithoutYear: withoutYear})
}

// rows judges every point with a bounded number of workers.
func (s *sweeper) rows(ctx context.Context) ([]Row, error) {
	var rows []Row
	first := len(s.axes[0].Points)
	others := 1
	if len(s.axes) == 2 {
		others = len(s.axes[1].Points)
	}
	for j := range others {
		for i := range first {
			at := []int{i}
			if len(s.axes) == 2 {
				at = append(at, j)
			}
			rows = append(rows, Row{At: at})
		}
	}
	var done atomic.Int64
	err := s.parallel(ctx, len(rows), func(n int) error {
		r := &rows[n]
		found, err := s.trial(ctx, s.pointsOf(r.At), s.options.WithoutYear)
		if err != nil {
			return err
		}
		s.note(r, found)
		if n := int(done.Add(1)); s.options.Progress != nil {
			s.options.Progress(n, len(rows))
		}
		return nil
	})
	return rows, err
}

func (s *sweeper) pointsOf(at []int) []Point {
	points := make([]Point, len(at))
	for i, n := range at {
		points[i] = s.axes[i].Points[n]
	}
	return points
}

// parallel runs n jobs on the workers that there are; the first error ends it.
func (s *sweeper) parallel(ctx context.Context, n int, do func(int) error) error {
	if err := lint.Spread(ctx, s.options.Workers, n, do); err != nil {
		return fmt.Errorf("sweeping: %w", err)
	}
	return nil
}

// note keeps what of a judged point is told.
func (s *sweeper) note(r *Row, d *lint.DesignResult) {
	r.Problems = d.Problems
	r.Values, r.Limits, r.judged = map[string]facts.Fact{}, map[string]float64{}, map[string]*judgement{}
	left := map[string]float64{} // headroom under the limits that are noted
	for i := range d.Verdicts {
		v := d.Verdicts[i]
		if v.Finding() && !(s.options.WithoutYear && lint.Awaits(&v)) {
			r.Findings[min(v.Grade.Rank(), 2)]++
		}
		j := &judgement{rule: v.Rule, about: v.About, which: v.Which, title: v.Title, grade: v.Grade, outcome: v.Outcome, headroom: v.Headroom}
		r.judged[v.Key()] = j
		switch {
		case s.options.WithoutYear && lint.Awaits(&v):
			j.awaits = true
		case v.Finding():
			j.finding = &v
		}
		if v.Is == nil || v.Is.ID == "" || d.System == nil || !limits(&v) {
			continue
		}
		j.limited = v.Is.ID
		if f, ok := d.System.Fact(v.Is.ID); ok && f.Kind == facts.Quantity {
			r.Values[f.ID] = f
			limit, headroom := nearest(&v)
			if before, told := left[f.ID]; limit != nil && (!told || headroom < before) {
				r.Limits[f.ID], left[f.ID] = *limit, headroom
			}
		}
	}
	if d.System == nil {
		return
	}
	for _, id := range s.options.Facts {
		if f, ok := d.System.Fact(id); ok {
			r.Values[id] = f
		}
	}
}

// limits tells a verdict that holds a number against a limit.
func limits(v *verdict.Verdict) bool {
	return (v.Relation == "at_most" || v.Relation == "at_least" || v.Relation == "between") && len(v.Limits) > 0
}

// nearest gives the limit that a verdict's number is nearest to, and how much is
// left under it; nil where that is unknown.
func nearest(v *verdict.Verdict) (limit *float64, headroom float64) {
	limit, headroom = v.Limits[0].Value, math.Inf(1)
	if v.Headroom != nil {
		headroom = *v.Headroom
	}
	if limit == nil || v.Is.Value == nil || v.Relation != "between" {
		return limit, headroom
	}
	for i := range v.Limits {
		if other := v.Limits[i].Value; other != nil && math.Abs(*other-*v.Is.Value) < math.Abs(*limit-*v.Is.Value) {
			limit = other
		}
	}
	return limit, headroom
}

// sample keeps one verdict of each key, for what does not change with the point.
func (s *sweeper) sample(rows []Row) {
	for i := range rows {
		for key, v := range rows[i].judged {
			if s.samples[key] == nil {
				s.samples[key], s.place[key] = v, len(s.place)
			}
		}
	}
}

// throughout lists the findings that stand at every point with one outcome.
func (s *sweeper) throughout(rows []Row) []verdict.Verdict {
	var all []verdict.Verdict
	for _, key := range slices.Sorted(maps.Keys(s.samples)) {
		v := s.samples[key]
		if v.finding == nil {
			continue
		}
		everywhere := true
		for i := range rows {
			here := rows[i].judged[key]
			everywhere = everywhere && here != nil && here.outcome == v.outcome
		}
		if everywhere {
			all = append(all, *v.finding)
		}
	}
	verdict.Sort(all)
	return all
}

// Exit is 2 where a point could not be read, else 0: a sweep asks what would be.
func (r *Result) Exit() int {
	for i := range r.Rows {
		if len(r.Rows[i].Problems) > 0 {
			return 2
		}
	}
	return 0
}

// Number gives a fact's value at a row in its unit; false where it is no number or
// unknown.
func (r *Row) Number(id string) (float64, bool) {
	f, ok := r.Values[id]
	if !ok || !f.Known || f.Kind != facts.Quantity {
		return 0, false
	}
	return facts.InUnit(f.SI, f.Unit), true
}

// Outcome gives the verdict of a key at a row; false where there is none.
func (r *Row) Outcome(key string) (verdict.Outcome, bool) {
	v := r.judged[key]
	if v == nil {
		return "", false
	}
	return v.outcome, true
}
