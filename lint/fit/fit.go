// Package fit finds how the panels in hand can be strung: which arrangements in
// series and parallel, on which inputs, at which bank voltage, meet every rule in
// force, and which rule stops each of the others.
//
// Use [Find] on an open [lint.Bench]. An arrangement is tried as a text: the
// design with other strings, a bank wired anew and its set-points in proportion,
// judged by the same pipeline as any design. [Result.Take] gives that text.
//
// # What is tried
//
// On every array of the design, and on every free input of its controllers (an
// array copied from the controller's first one): for each kind of panel one group
// of like strings, and strings of unlike panels. Left out as not sensible are
// strings on one input whose voltages at best power differ by more than 15 %, and
// unlike panels in one string whose currents do by more than 25 % (the project's
// own bounds, far wider than any loss that is worth having); two groups of one
// kind on one array; and arrangements that are mirror images on like inputs. Not
// all panels need be used. Banks are tried at every voltage that the controllers
// list, with the batteries in hand wired anew.
//
// # What counts
//
// A finding of grade stop or fix that rests on the panels and is about the PV
// side, the chargers or the system as a whole stops an arrangement, whether the
// design as it stands has it or not: an unproven cold voltage is not met. Another
// finding counts unless the design as it stands has the same one with the same
// figures; then it is told beside. Where the bank's voltage is another, what breaks
// but does not rest on the panels (an inverter, a lamp, a converter) must be
// changed too: such an arrangement is kept apart and is no answer.
package fit

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"sync"
	"sync/atomic"

	"stringline/lint"
	"stringline/lint/verdict"
	"stringline/schema/rewrite"
	"stringline/schema/source"
)

// Panels is a number of like panels.
type Panels struct {
	Name  string
	Count int
}

// Options says what is looked for.
type Options struct {
	// Panels are those in hand; nil takes the design's own.
	Panels []Panels
	// Most bounds how many arrangements are judged; 0 is [MostArrangements].
	Most int
	// Years bounds how many get a year of sun; 0 is [MostYears].
	Years    int
	Workers  int                   // arrangements judged at once; 0 for one a processor
	Progress func(done, total int) // may be nil; called from several goroutines
}

// Bounds where the options give none.
const (
	MostArrangements = 1000
	MostYears        = 20
)

// State is what became of an arrangement.
type State string

// The states.
const (
	Meets        State = "meets"         // every rule in force
	AfterChanges State = "after_changes" // once what hangs on the bank's voltage is changed too
	Waits        State = "waits"         // every rule that was put to it; a stop or fix waits for a year of sun
	Stopped      State = "stopped"
)

// Arrangement is one way of stringing the panels.
type Arrangement struct {
	// Number is its place in the list, from 1: what --take asks for. 0 where it
	// is stopped.
	Number   int
	State    State
	AsIs     bool // the design as it stands
	Banks    []BankWiring
	Strings  []Strings
	LeftOver []Panels
	// Stops are the findings that stop it, worst first; Problems, what its text
	// could not be read for.
	Stops    []verdict.Verdict
	Problems source.Problems
	// MustChange are the findings that hang on the bank's voltage and not on the
	// panels.
	MustChange []verdict.Verdict
	// NotPut are the rules that need a year of sun and were not put, since the
	// arrangement is not among the likeliest; empty where all were.
	NotPut []string
	Advice int // findings of grade advise
	// Waived are the verdicts on the panels that a waiver of the design permits,
	// although it may have been given for another arrangement.
	Waived []verdict.Verdict
	// YearlyEnergy in Wh into the banks; nil where it was not computed or is unknown.
	YearlyEnergy *float64
	Sky          string // what the year rests on
	// Least is the verdict on the panels' limits with the least headroom.
	Least *verdict.Verdict
	// ConductorMass in kg of the runs of strings and arrays; nil where unknown. The
	// sizes are the design's for every arrangement: which size a smaller current
	// would allow hangs on the protection too, which is no part of an arrangement.
	ConductorMass *float64

	candidate candidate
	likely    float64 // W, orders what gets a year
}

// Strings is one group of like strings on an array.
type Strings struct {
	Array    string
	Charger  string
	Input    int
	CopyOf   string   // the array that a new one is copied from; "" for one of the design's
	Series   []Panels // in one string
	Parallel int
}

// BankWiring is how a bank's batteries are wired.
type BankWiring struct {
	Bank             string
	Voltage          float64 // system voltage
	Series, Parallel int
	LeftOver         int // batteries
	AsIs             bool
	Settings         []Setting // what is programmed in proportion
}

// Setting is one set-point that goes with the bank's voltage.
type Setting struct{ ID, Was, Now string }

// NoBank is a bank voltage that cannot be had, and why.
type NoBank struct {
	Bank    string
	Voltage float64
	Why     string
}

// Result is all that was found.
type Result struct {
	Base    *lint.DesignResult // the design as it stands
	Hand    []Panels
	NoBanks []NoBank
	// Answers meet every rule, best first.
	Answers []*Arrangement
	// After are those that need more changed than the panels, best first.
	After []*Arrangement
	// Waiting are those that nothing stops so far, likeliest first: there was no
	// year for them.
	Waiting []*Arrangement
	Stopped []Group
	// Beside are the findings that the design has anyway.
	Beside []verdict.Verdict
	// Judged of Possible arrangements were judged. More tells that there are more
	// than Possible, which were not even counted.
	Judged, Possible int
	More             bool
	Years            int // arrangements that got a year of sun
	Arrays           int // where strings may stand, free inputs included

	finder *finder
}

// Group is the arrangements that one rule stops: it is the first of what stops
// each of them.
type Group struct {
	Rule, Title string
	Grade       verdict.Grade
	Stopped     []*Arrangement
	// Nearest is the verdict of the one that comes closest to the limit.
	Nearest *verdict.Verdict
}

// Find tries the arrangements. The error is the context's, or says why nothing
// can be tried: the design has errors, a panel is not on the shelf.
func Find(ctx context.Context, bench *lint.Bench, o Options) (*Result, error) {
	f := &finder{bench: bench, options: o}
	if f.options.Most <= 0 {
		f.options.Most = MostArrangements
	}
	if f.options.Years <= 0 {
		f.options.Years = MostYears
	}
	if err := f.begin(ctx); err != nil {
		return nil, err
	}
	result := &Result{Base: f.base, Hand: f.hand, Arrays: len(f.places), NoBanks: f.noBanks, finder: f}
	chosen, possible, more := f.candidates()
	result.Judged, result.Possible, result.More = len(chosen), possible, more
	all, err := f.judgeAll(ctx, chosen, false)
	if err != nil {
		return nil, err
	}
	if err := f.years(ctx, all, result); err != nil {
		return nil, err
	}
	result.settle(all)
	result.Beside = f.besides()
	return result, nil
}

// Take gives the text of an arrangement by its number, and the arrangement as the
// whole of the rules judge it: one that waited for its year may turn out stopped.
func (r *Result) Take(ctx context.Context, number int) ([]byte, *Arrangement, error) {
	for _, a := range r.Numbered() {
		if a.Number != number {
			continue
		}
		text, err := r.finder.text(a.candidate, true)
		if err == nil && len(a.NotPut) > 0 {
			a, err = r.finder.judge(ctx, a.candidate, true)
			if err == nil {
				a.Number = number
			}
		}
		if err != nil {
			return nil, nil, fmt.Errorf("writing arrangement %d: %w", number, err)
		}
		return text, a, nil
	}
	count := len(r.Numbered())
	if count == 0 {
		return nil, nil, errors.New("there is no arrangement to take: every one is stopped")
	}
	return nil, nil, fmt.Errorf("there is no arrangement %d; 1 to %d", number, count)
}

// Numbered lists what can be taken, in the order of the numbers.
func (r *Result) Numbered() []*Arrangement { return slices.Concat(r.Answers, r.After, r.Waiting) }

// finder holds what all arrangements of one search share.
type finder struct {
	bench   *lint.Bench
	options Options
	base    *lint.DesignResult
	text0   *rewrite.Document
	found   map[string]*verdict.Verdict // the design's own findings, by key
	rests   map[string]bool             // rules that rest on the panels

	hand    []Panels
	kinds   []kind
	places  []place
	wirings [][]BankWiring // each a way for all banks together
	noBanks []NoBank

	mutex sync.Mutex
	told  map[string]verdict.Verdict // findings beside, by key
}

// begin judges the design as it stands and looks at what there is to string.
func (f *finder) begin(ctx context.Context) error {
	base, err := f.bench.Judge(ctx, lint.Trial{})
	if err != nil {
		return err
	}
	if len(base.Problems) > 0 {
		return fmt.Errorf("%s has errors, which every arrangement of it would have too:\n%w", base.File, base.Problems)
	}
	if problems := f.bench.Problems(); len(problems) > 0 {
		return problems
	}
	f.base = base
	f.found, f.told = map[string]*verdict.Verdict{}, map[string]verdict.Verdict{}
	for i := range base.Verdicts {
		if v := &base.Verdicts[i]; v.Finding() {
			f.found[v.Key()] = v
		}
	}
	file := f.bench.Design().Files[0]
	text, problems := rewrite.Open(file.Name, file.Text)
	if len(problems) > 0 {
		return problems
	}
	f.text0 = text
	if err := f.restingRules(ctx); err != nil {
		return err
	}
	if err := f.takeStock(); err != nil {
		return err
	}
	f.placesOf()
	if len(f.places) == 0 {
		return fmt.Errorf("%s has no array: an arrangement is put in place of one", base.File)
	}
	f.wiringsOf()
	return nil
}

// judgeAll judges candidates with a bounded number of workers; results stand where
// the candidates do.
func (f *finder) judgeAll(ctx context.Context, of []candidate, year bool) ([]*Arrangement, error) {
	var done atomic.Int64
	all := make([]*Arrangement, len(of))
	err := lint.Spread(ctx, f.options.Workers, len(of), func(i int) (err error) {
		if all[i], err = f.judge(ctx, of[i], year); err != nil {
			return err
		}
		if n := int(done.Add(1)); f.options.Progress != nil {
			f.options.Progress(n, len(of))
		}
		return nil
	})
	if err != nil {
		return nil, fmt.Errorf("judging arrangements: %w", err)
	}
	return all, nil
}
