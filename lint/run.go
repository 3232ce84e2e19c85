package lint

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"io/fs"
	"path"
	"slices"

	"stringline/lint/facts"
	"stringline/lint/survey"
	"stringline/lint/verdict"
	"stringline/schema/codebook"
	"stringline/schema/source"
	"stringline/schema/workshop"
)

// Options says what to judge, and hands down all that the pipeline may touch.
type Options struct {
	Disk       survey.Disk
	Embedded   fs.FS    // the codebooks that come with the program, one folder each
	WorkingDir string   // absolute, "/" between folders
	Paths      []string // designs, folders, or other files of a workshop
	// Stdin, if not nil, is one more design, as if it lay in WorkingDir. It is
	// shown as "-".
	Stdin []byte
	Date  string // yyyy-mm-dd, decides the ends of waivers
	// RejectFrom is the least grade of finding that makes the run end with 1.
	RejectFrom verdict.Grade
	// Rules keeps only these rules ("limits.cold_voltage") and codebooks
	// ("limits"); empty keeps all.
	Rules []string
	// Isolation runs outside codebooks apart. Where it is nil they need trust.
	Isolation Isolation
	// Trust names the outside codebooks that may run inside this process.
	Trust    []string
	Workers  int                   // designs judged at once; 0 for one a processor
	Version  string                // of this program, such as 0.1.0; a codebook may need a newer one
	Progress func(done, total int) // may be nil; called by one goroutine at a time
	// Each, if not nil, is handed every design as soon as all before it (by
	// file) were, by one goroutine at a time. The result keeps none of them
	// then, so that a run over thousands of designs keeps its memory flat. An
	// error of Each ends the run with that error.
	Each     func(*DesignResult) error
	Baseline *Baseline // findings that were accepted before; nil where there is none
	// WithoutSystems drops each design's facts once it is judged.
	WithoutSystems bool
}

// Run judges every design under the paths. What is wrong with a path, a file or
// a codebook is in the result; the error is the context's, that of Each, or says
// that the options make no sense. Where the context ended the run, or the program
// itself failed, there is a result beside the error: it holds what was judged until
// then, and one of its problems says how much that is.
func Run(ctx context.Context, o Options) (*Result, error) {
	if o.Disk == nil || o.Embedded == nil {
		return nil, errors.New("judging designs: no file system or no codebooks were handed down")
	}
	result := &Result{Version: o.Version, Date: o.Date, RejectFrom: o.RejectFrom, from: o.WorkingDir}
	accepted, unread, err := baselineOf(o)
	if err != nil {
		return nil, err
	}
	result.Problems = append(result.Problems, unread...)
	shelf := newLibrary(ctx, o)
	defer shelf.close()
	jobs, problems, err := gather(shelf, o)
	if err != nil {
		return nil, err
	}
	result.Problems = append(result.Problems, problems...)
	counted := counter{reject: o.RejectFrom, baseline: accepted != nil}
	var handed error
	judged := judgeAll(ctx, o, accepted, jobs, func(d *DesignResult) error {
		counted.add(d)
		if o.Each != nil {
			handed = o.Each(d)
			return handed
		}
		result.Designs = append(result.Designs, *d)
		return nil
	})
	switch {
	case handed != nil && ctx.Err() == nil:
		return nil, handed
	case judged != nil && ctx.Err() == nil:
		result.Problems = append(result.Problems, brokenOff(judged, counted.summary.Designs, len(jobs)))
	case judged != nil:
		result.Problems = append(result.Problems, interrupted(counted.summary.Designs, len(jobs)))
	}
	accepted.use(result, &counted)
	result.Problems = append(result.Problems, roomProblems(jobs)...)
	result.Books = booksInUse(jobs)
	result.Problems = append(result.Problems, unknownRules(o.Rules, jobs)...)
	if len(jobs) == 0 && len(result.Problems) == 0 {
		result.Problems = append(result.Problems, source.Problem{Kind: "no_design", Message: "no design was named"})
	}
	result.Problems.Sort()
	result.Problems = slices.Compact(result.Problems)
	result.Summary, result.Exit = counted.end(result)
	result.Summary.NotJudged = len(jobs) - counted.summary.Designs
	return result, judged
}

// gather lists the designs under the paths, and the one from standard input.
func gather(shelf *library, o Options) ([]job, source.Problems, error) {
	workshops, problems := survey.Find(o.Disk, o.WorkingDir, o.Paths)
	var jobs []job
	for _, w := range workshops {
		r := openWorkshop(shelf, w)
		for _, name := range w.Designs {
			jobs = append(jobs, job{room: r, name: name, show: w.Show(name)})
		}
	}
	if o.Stdin != nil {
		home, err := survey.Home(o.Disk, o.WorkingDir, o.WorkingDir)
		if err != nil {
			return nil, nil, fmt.Errorf("opening the working folder: %w", err)
		}
		name := path.Join(".", survey.Relative(home.Dir, o.WorkingDir), "standard-input"+survey.DesignSuffix)
		jobs = append(jobs, job{room: openWorkshop(shelf, home), name: name, show: "-", text: o.Stdin})
	}
	slices.SortStableFunc(jobs, func(a, b job) int { return cmp.Compare(a.show, b.show) })
	return jobs, problems, nil
}

// job is one design to judge.
type job struct {
	room *room
	name string // inside the workshop's tree
	show string
	text []byte

	texts       map[string][]byte         // of parts files that are tried out, by name as shown
	parameters  map[string]codebook.Value // that are tried out, by the ids of their facts
	withoutYear bool
}

// judge is the pipeline for one design: source, design, facts, verdicts.
func (j *job) judge(ctx context.Context, o Options, accepted *against) (DesignResult, error) {
	r := j.room
	d := j.load()
	found := DesignResult{File: j.show, Name: d.Name, Revision: d.Revision, Digest: d.Digest, Problems: d.Problems}
	if r.workshop != nil {
		found.Workshop = r.workshop.File
	}
	books, problems := r.inForce(d)
	found.Problems = append(found.Problems, problems...)
	for _, b := range books {
		found.Books = append(found.Books, b.Name())
	}
	if d.Head == nil && len(d.Blocks) == 0 {
		found.Problems.Sort()
		accepted.put(&found, r, nil)
		return found, nil // nothing could be read; the problems say why
	}
	waivers, problems := waiversOf(d, books, o.Rules)
	system := facts.NewWith(d, &r.weathers)
	if j.withoutYear {
		system.WithholdYear()
	}
	found.Problems = append(append(found.Problems, problems...), system.Problems()...)
	found.Problems.Sort()

	court := r.judgeOf(books)
	if len(j.parameters) > 0 {
		court = court.With(j.parameters)
	}
	judged, err := court.Judge(ctx, system)
	if err != nil {
		return found, fmt.Errorf("judging %s: %w", j.show, err)
	}
	if len(o.Rules) > 0 {
		judged = slices.DeleteFunc(judged, func(v verdict.Verdict) bool { return !kept(o.Rules, v.Rule) })
	}
	found.Verdicts = verdict.Apply(judged, waivers, o.Date)
	accepted.put(&found, r, ruleIDs(books))
	if !o.WithoutSystems {
		found.System = system
	}
	return found, nil
}

// openWorkshop reads a workshop's file, where it has one.
func openWorkshop(shelf *library, place *survey.Workshop) *room {
	r := &room{library: shelf, place: place}
	if place.File != "" {
		r.workshop = workshop.Load(place.Tree, place.File, place.Show)
	}
	r.settle()
	return r
}
