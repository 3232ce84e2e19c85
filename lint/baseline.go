package lint

import (
	"errors"
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"
	"sync"

	"stringline/lint/survey"
	"stringline/lint/verdict"
	"stringline/schema/source"
)

// Baseline is what [Options] say about findings that were accepted before.
type Baseline struct {
	Name string // of the file, as shown to people
	Dir  string // absolute; paths in the file are relative to it
	Text []byte
	New  bool // there is no file yet: nothing is accepted
}

// BaselineUse is what a run found about its baseline.
type BaselineUse struct {
	Name string
	Held int // findings that it accepts
	// Worse counts those that it lists and that got worse, Fresh those that it
	// does not list.
	Worse, Fresh int
	Gone         []verdict.Accepted // listed, and found no more; in the order of the file

	baseline *verdict.Baseline
	dir      string
}

// against is a baseline while a run goes on.
type against struct {
	*verdict.Baseline
	disk       survey.Disk
	dir, from  string // absolute: the baseline's folder, the working folder
	selection  []string
	mutex      sync.Mutex
	judged     map[string]bool // files, as the baseline names them
	stand      map[int]bool    // lines that a finding stands for, or of which nothing is known
	problems   source.Problems
	unreadable bool
}

// baselineOf reads the baseline of a run; nil where there is none.
func baselineOf(o Options) (*against, source.Problems, error) {
	if o.Baseline == nil {
		return nil, nil, nil
	}
	if o.Stdin != nil {
		return nil, nil, errors.New("a baseline lists designs by their files: standard input has none")
	}
	b := &verdict.Baseline{Name: o.Baseline.Name}
	var problems source.Problems
	if !o.Baseline.New {
		if b, problems = verdict.ReadBaseline(o.Baseline.Name, o.Baseline.Text); b == nil {
			b = &verdict.Baseline{Name: o.Baseline.Name}
		}
	}
	return &against{
		Baseline: b, disk: o.Disk, dir: o.Baseline.Dir, from: o.WorkingDir, selection: o.Rules,
		judged: map[string]bool{}, stand: map[int]bool{}, unreadable: len(problems) > 0,
	}, problems, nil
}

// name gives a design's file, as shown, as the baseline names it.
func (a *against) name(file string) string { return nameIn(a.dir, a.from, file) }

func nameIn(dir, from, file string) string {
	if !path.IsAbs(file) {
		file = path.Join(from, file)
	}
	return survey.Relative(dir, path.Clean(file))
}

// put compares a design with its lines and marks its verdicts. A line whose rule
// nobody knows is a problem; one whose codebook is no longer in force is gone.
func (a *against) put(d *DesignResult, r *room, rules []string) {
	if a == nil {
		return
	}
	file := a.name(d.File)
	stand := a.Compare(file, d.Verdicts)
	var problems source.Problems
	for _, i := range a.OfFile(file) {
		line := &a.Lines[i]
		book, _, _ := strings.Cut(line.Rule, ".")
		_, outside := r.outside[book]
		inForce := slices.Contains(d.Books, book)
		if len(d.Problems) > 0 || !kept(a.selection, line.Rule) {
			stand[i] = true // not known to be gone
			continue
		}
		switch {
		case stand[i] || line.Rule == verdict.WaiverRule || inForce && slices.Contains(rules, line.Rule):
		case !inForce && !outside && slices.Contains(r.embedded, book):
		case !inForce && outside: // its codebook could not be loaded, which is told
			stand[i] = true
		default:
			stand[i] = true
			problems = append(problems, source.Problem{
				Kind: "baseline", Message: fmt.Sprintf("reading the baseline: no rule that judges %s has the id %q; take the line out, or name what the rule is called now", d.File, line.Rule),
				Expected: "the id of a rule in force", Found: line.Rule, Near: source.Nearest(line.Rule, rules), At: line.RuleAt(),
			})
		}
	}
	a.mutex.Lock()
	defer a.mutex.Unlock()
	a.problems = append(a.problems, problems...)
	a.judged[file] = true
	for i := range stand {
		a.stand[i] = true
	}
}

// use tells in the result what became of the lines, once every design was put.
func (a *against) use(result *Result, c *counter) {
	if a == nil {
		return
	}
	result.Problems = append(result.Problems, a.problems...)
	u := &BaselineUse{Name: a.Name, Held: c.held, Worse: c.worse, Fresh: c.fresh, dir: a.dir}
	if !a.unreadable {
		u.baseline = a.Baseline
	}
	there := map[string]bool{}
	for i := range a.Lines {
		line := &a.Lines[i]
		if !a.judged[line.File] {
			exists, looked := there[line.File]
			if !looked {
				_, err := a.disk.Stat(path.Join(a.dir, line.File))
				exists = !errors.Is(err, fs.ErrNotExist)
				there[line.File] = exists
			}
			if exists {
				continue // not of this run
			}
		}
		if !a.stand[i] {
			u.Gone = append(u.Gone, *line)
		}
	}
	result.Baseline = u
}

// Acceptance is what [Accept] did.
type Acceptance struct {
	Text                    []byte // the new baseline
	Added, Renewed, Dropped int    // lines: new; of findings that got worse; gone
	Refused                 []Refusal

	marks []mark
}

// mark is a finding of the run and its line in the new baseline.
type mark struct {
	design, verdict int
	line            verdict.Accepted
}

// Refusal is a finding that was not accepted.
type Refusal struct{ File, Rule, About, Which, Why string }

// Accept puts the findings of a run that is over into its baseline and drops what
// is gone; lines of designs and rules that the run did not judge stay. The result
// stays as it is until [Acceptance.Settle]: a baseline that could not be written
// accepts nothing. The run must have been made with [Options].Baseline, must hold its designs, and
// must have read everything: half of a run must not decide what is accepted.
func Accept(r *Result) (*Acceptance, error) {
	switch {
	case r.Baseline == nil:
		return nil, errors.New("accepting findings: the run has no baseline")
	case r.Exit == 2 || r.Baseline.baseline == nil:
		return nil, errors.New("nothing was accepted: not everything could be read and judged")
	}
	b := r.Baseline
	gone := map[string]bool{}
	for i := range b.Gone {
		gone[b.Gone[i].Key()] = true
	}
	lines, at := []verdict.Accepted{}, map[string]int{}
	for i := range b.baseline.Lines {
		if line := b.baseline.Lines[i]; !gone[line.Key()] {
			at[line.Key()] = len(lines)
			lines = append(lines, line)
		}
	}
	done := &Acceptance{Dropped: len(b.Gone)}
	for n := range r.Designs {
		d := &r.Designs[n]
		for m := range d.Verdicts {
			v := &d.Verdicts[m]
			if !v.Finding() && !v.Held() {
				continue
			}
			if why := v.Acceptable(); why != "" {
				done.Refused = append(done.Refused, Refusal{d.File, v.Rule, v.About, v.Which, why})
				continue
			}
			now := v.Accept(nameIn(b.dir, r.from, d.File), r.Date)
			i, listed := at[now.Key()]
			switch {
			case listed:
				if v.Accepted.Worse != "" {
					done.Renewed++
				}
				lines[i] = v.Accepted.Renew(v, r.Date)
				now = lines[i]
			default:
				done.Added++
				lines = append(lines, now)
			}
			done.marks = append(done.marks, mark{n, m, now})
		}
	}
	text, err := verdict.WriteBaseline(lines)
	if err != nil {
		return nil, err
	}
	done.Text = text
	return done, nil
}

// Settle makes the run's verdicts, counts and exit status those under the new
// baseline, once that is written.
func (a *Acceptance) Settle(r *Result) {
	for _, m := range a.marks {
		r.Designs[m.design].Verdicts[m.verdict].Accepted = &verdict.Acceptance{Was: m.line}
	}
	counted := counter{reject: r.RejectFrom, baseline: true}
	for i := range r.Designs {
		counted.add(&r.Designs[i])
	}
	r.Summary, r.Exit = counted.end(r)
	b := r.Baseline
	b.Held, b.Worse, b.Fresh, b.Gone = counted.held, counted.worse, counted.fresh, nil
}
