package lint

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"strings"

	"stringline/lint/facts"
	"stringline/lint/judge"
	"stringline/lint/verdict"
	"stringline/schema/codebook"
	"stringline/schema/design"
	"stringline/schema/source"
)

// Bench judges many texts of one design: its workshop, parts and codebooks are
// read once, and what rules answer is remembered by the design's structure. Make
// it with [OpenBench] and end it with [Bench.Close]; in between several goroutines
// may use it.
type Bench struct {
	options Options
	shelf   *library
	job     job
	design  *design.Design
}

// OpenBench opens the one design that the options name, by Paths or Stdin. The
// error says that they name none or several, or that it cannot be read at all.
func OpenBench(ctx context.Context, o Options) (*Bench, error) {
	if o.Disk == nil || o.Embedded == nil {
		return nil, errors.New("opening a design: no file system or no codebooks were handed down")
	}
	shelf := newLibrary(ctx, o)
	b, err := openBench(shelf, o)
	if err != nil {
		shelf.close()
		return nil, err
	}
	return b, nil
}

func openBench(shelf *library, o Options) (*Bench, error) {
	jobs, problems, err := gather(shelf, o)
	switch {
	case err != nil:
		return nil, err
	case len(problems) > 0:
		return nil, problems
	case len(jobs) != 1:
		return nil, fmt.Errorf("opening a design: the path holds %d designs; name one", len(jobs))
	}
	b := &Bench{options: o, shelf: shelf, job: jobs[0]}
	b.design = b.job.load()
	if b.design.Head == nil && len(b.design.Blocks) == 0 {
		return nil, fmt.Errorf("opening a design: %s could not be read:\n%w", b.job.show, b.design.Problems)
	}
	b.job.text = b.design.Files[0].Text // a change of the file meanwhile must not mix two texts
	return b, nil
}

// Close ends what runs codebooks apart.
func (b *Bench) Close() { b.shelf.close() }

// Design is the design as it stands in its file.
func (b *Bench) Design() *design.Design { return b.design }

// Version is that of this program.
func (b *Bench) Version() string { return b.options.Version }

// Date is the day that ends waivers, yyyy-mm-dd.
func (b *Bench) Date() string { return b.options.Date }

// Trial says what is judged.
type Trial struct {
	// Texts stand in place of the files' own, by their names as shown: the
	// design's, those of parts files. A file without one is as it stands.
	Texts map[string][]byte
	// Parameters stand in place of what the workshop sets, by the ids of their facts
	// ("param.practice.voltage_drop_max"): written as in workshop.hcl, quotes left out.
	Parameters map[string]string
	// WithoutYear leaves out what rests on a year of sun: verdicts on it are
	// unproven and miss [facts.WithheldYear].
	WithoutYear bool
}

// Judge judges the design with some texts in place of its own. What is wrong with
// them is in the result; the error is the context's, or is about a parameter.
func (b *Bench) Judge(ctx context.Context, t Trial) (*DesignResult, error) {
	j := b.job
	j.withoutYear = t.WithoutYear
	for id, text := range t.Parameters {
		p, ok := b.Parameter(id)
		if !ok {
			return nil, fmt.Errorf("trying a value of %s: no codebook in force has this parameter", id)
		}
		v, err := p.Read(text)
		if err != nil {
			return nil, fmt.Errorf("trying a value of %s: %w", id, err)
		}
		if j.parameters == nil {
			j.parameters = map[string]codebook.Value{}
		}
		j.parameters[id] = v
	}
	for name, text := range t.Texts {
		if name == b.design.File {
			j.text = text
			continue
		}
		if j.texts == nil {
			j.texts = map[string][]byte{}
		}
		j.texts[name] = text
	}
	found, err := j.judge(ctx, b.options, nil) // no baseline: what is accepted in the design is not in a trial
	if err != nil {
		return nil, err
	}
	return &found, nil
}

// Parameter finds a parameter of a codebook that is in force for the design, by the
// id of its fact.
func (b *Bench) Parameter(id string) (*codebook.Parameter, bool) {
	rest, ok := strings.CutPrefix(id, "param.")
	name, parameter, found := strings.Cut(rest, ".")
	if !ok || !found {
		return nil, false
	}
	for _, book := range b.books() {
		if book.Name() == name {
			return book.Codebook().Parameter(parameter)
		}
	}
	return nil, false
}

// InForce gives what a parameter is set to for the design, as a person writes it; ""
// where it could not be read, or there is no such parameter.
func (b *Bench) InForce(id string) string {
	for _, book := range b.books() {
		for _, p := range bookInUse(book, b.job.room).Parameters {
			if judge.ParameterID(book.Name(), p.Name) == id {
				return p.Text
			}
		}
	}
	return ""
}

// Parameters lists the ids of all of them.
func (b *Bench) Parameters() []string {
	var ids []string
	for _, book := range b.books() {
		for i := range book.Codebook().Parameters {
			ids = append(ids, judge.ParameterID(book.Name(), book.Codebook().Parameters[i].Name))
		}
	}
	return ids
}

// Asked lists what a codebook in force asks designs to answer in a kind of block.
// ok is false where no such codebook is in force.
func (b *Bench) Asked(book, kind string) (questions []design.Attribute, ok bool) {
	if !slices.ContainsFunc(b.books(), func(in *judge.Book) bool { return in.Name() == book }) {
		return nil, false
	}
	asked, ok := b.job.room.declares(book)
	return asked[kind], ok
}

func (b *Bench) books() []*judge.Book {
	books, _ := b.job.room.inForce(b.design) // what is wrong with them stands in the design's result
	return books
}

// Reads tells which facts and parameters each rule in force asks for on a design
// that was judged here, by rule id; and which rules read values by themselves, so
// that they may ask for more.
func (b *Bench) Reads(ctx context.Context, d *DesignResult) (ids map[string][]string, byValue map[string]bool, err error) {
	if d.System == nil {
		return nil, nil, errors.New("asking what rules read: the design has no facts")
	}
	books, _ := b.job.room.inForce(d.System.Design()) // what is wrong with them stands in the design's result
	j := b.job.room.judgeOf(books)
	ids, err = j.Reads(ctx, d.System)
	return ids, j.ByValue(), err
}

// Problems gives what is wrong with the workshop, its codebooks and the selection
// of rules. Something must have been judged before.
func (b *Bench) Problems() source.Problems {
	jobs := []job{b.job}
	b.job.room.mutex.Lock()
	problems := slices.Clone(b.job.room.problems)
	b.job.room.mutex.Unlock()
	problems = append(problems, unknownRules(b.options.Rules, jobs)...)
	problems.Sort()
	return slices.Compact(problems)
}

// Books lists the codebooks that judged so far.
func (b *Bench) Books() []BookInUse { return booksInUse([]job{b.job}) }

// Awaits tells whether a verdict was left open because the year was left out.
func Awaits(v *verdict.Verdict) bool {
	return v.Outcome == verdict.Unproven && slices.Contains(v.Missing, facts.WithheldYear)
}

// load reads the job's design.
func (j *job) load() *design.Design {
	r := j.room
	show := func(name string) string {
		if name == j.name {
			return j.show
		}
		return r.place.Show(name)
	}
	return design.Load(design.Options{
		Files: r.place.Tree, Path: j.name, Show: show, Text: j.text, Texts: j.texts,
		Parts: r.parts(), Declares: r.declares, Cache: &r.cache,
	})
}
