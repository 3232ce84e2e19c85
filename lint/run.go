package lint

import (
	"cmp"
	"context"
	"errors"
	"fmt"
	"io/fs"
	"path"
	"runtime"
	"slices"
	"sync"
	"sync/atomic"

	"stringline/lint/facts"
	"stringline/lint/survey"
	"stringline/lint/verdict"
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
	Progress func(done, total int) // may be nil; called from several goroutines
	// WithoutSystems drops each design's facts once it is judged, so that a
	// run over thousands of designs keeps its memory flat.
	WithoutSystems bool
}

// Run judges every design under the paths. What is wrong with a path, a file or
// a codebook is in the result; the error is the context's, or says that the
// options make no sense.
func Run(ctx context.Context, o Options) (*Result, error) {
	if o.Disk == nil || o.Embedded == nil {
		return nil, errors.New("judging designs: no file system or no codebooks were handed down")
	}
	result := &Result{Version: o.Version, Date: o.Date}
	shelf := newLibrary(ctx, o)
	defer shelf.close()
	jobs, problems, err := gather(shelf, o)
	if err != nil {
		return nil, err
	}
	result.Problems = append(result.Problems, problems...)
	result.Designs = make([]DesignResult, len(jobs))
	if err := judgeAll(ctx, o, jobs, result.Designs); err != nil {
		return nil, err
	}
	result.Problems = append(result.Problems, roomProblems(jobs)...)
	result.Books = booksInUse(jobs)
	result.Problems = append(result.Problems, unknownRules(o.Rules, jobs)...)
	result.Problems = slices.CompactFunc(result.Problems, func(a, b source.Problem) bool { return a == b })
	if len(jobs) == 0 && len(result.Problems) == 0 {
		result.Problems = append(result.Problems, source.Problem{Kind: "no_design", Message: "no design was named"})
	}
	result.Problems.Sort()
	result.Summary = summarize(result)
	result.Exit = ExitOf(result, o.RejectFrom)
	return result, nil
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

	texts       map[string][]byte // of parts files that are tried out, by name as shown
	withoutYear bool
}

// judgeAll judges the jobs with a bounded number of workers; results stand where
// their jobs do.
func judgeAll(ctx context.Context, o Options, jobs []job, results []DesignResult) error {
	workers := o.Workers
	if workers <= 0 {
		workers = runtime.GOMAXPROCS(0)
	}
	var (
		next, done atomic.Int64
		group      sync.WaitGroup
		once       sync.Once
		failure    error
	)
	for range min(workers, len(jobs)) {
		group.Go(func() {
			for {
				i := int(next.Add(1)) - 1
				if i >= len(jobs) || ctx.Err() != nil {
					return
				}
				found, err := jobs[i].judge(ctx, o)
				if err != nil {
					once.Do(func() { failure = err })
					return
				}
				results[i] = found
				if n := int(done.Add(1)); o.Progress != nil {
					o.Progress(n, len(jobs))
				}
			}
		})
	}
	group.Wait()
	if failure == nil {
		failure = ctx.Err()
	}
	return failure
}

// judge is the pipeline for one design: source, design, facts, verdicts.
func (j *job) judge(ctx context.Context, o Options) (DesignResult, error) {
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
		return found, nil // nothing could be read; the problems say why
	}
	waivers, problems := waiversOf(d, books, o.Rules)
	system := facts.NewWith(d, &r.weathers)
	if j.withoutYear {
		system.WithholdYear()
	}
	found.Problems = append(append(found.Problems, problems...), system.Problems()...)
	found.Problems.Sort()

	judged, err := r.judgeOf(books).Judge(ctx, system)
	if err != nil {
		return found, fmt.Errorf("judging %s: %w", j.show, err)
	}
	if len(o.Rules) > 0 {
		judged = slices.DeleteFunc(judged, func(v verdict.Verdict) bool { return !kept(o.Rules, v.Rule) })
	}
	found.Verdicts = verdict.Apply(judged, waivers, o.Date)
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
