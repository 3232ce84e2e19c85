package lint

import (
	"context"
	"fmt"
	"io/fs"
	"maps"
	"path"
	"slices"
	"strconv"
	"strings"
	"sync"

	"stringline/lint/facts"
	"stringline/lint/judge"
	"stringline/lint/survey"
	"stringline/lint/verdict"
	"stringline/schema/design"
	"stringline/schema/source"
	"stringline/schema/workshop"
)

// always lists the embedded codebooks that are in force for every design.
var always = []string{"datasheet", "limits", "practice"}

// library keeps the codebooks of a run: each is loaded when first asked for, once.
type library struct {
	ctx      context.Context
	options  Options
	embedded []string // names of the folders in options.Embedded
	mutex    sync.Mutex
	books    map[string]*shelved // by name, and workshop folder for outside books
	ahead    sync.WaitGroup      // loads that were begun before anybody asked
}

// shelved is a codebook that was asked for.
type shelved struct {
	once     sync.Once
	book     *judge.Book
	problems source.Problems
}

func newLibrary(ctx context.Context, o Options) *library {
	l := &library{ctx: ctx, options: o, books: map[string]*shelved{}}
	entries, _ := fs.ReadDir(o.Embedded, ".")
	for _, e := range entries {
		if e.IsDir() {
			l.embedded = append(l.embedded, e.Name())
		}
	}
	for _, name := range always { // every design needs them: begin before one is read
		if slices.Contains(l.embedded, name) {
			l.ahead.Go(func() { l.own(name) })
		}
	}
	return l
}

// shelves gives what was asked for, once no load goes on that nobody waits for: a
// run that is called off may end before those that were begun ahead.
func (l *library) shelves() map[string]*shelved {
	l.ahead.Wait()
	l.mutex.Lock()
	defer l.mutex.Unlock()
	return maps.Clone(l.books)
}

// close ends what runs codebooks apart.
func (l *library) close() {
	for _, s := range l.shelves() {
		if s.book != nil {
			s.book.Close()
		}
	}
}

func (l *library) load(key string, find func() judge.Source) (*judge.Book, source.Problems) {
	l.mutex.Lock()
	s, ok := l.books[key]
	if !ok {
		s = &shelved{}
		l.books[key] = s
	}
	l.mutex.Unlock()
	s.once.Do(func() {
		// Where loading fails so badly that it never comes back, whoever else waits for
		// the book must not go on as if there were none.
		s.problems = source.Problems{{Kind: "failure", Message: "loading a codebook: the program itself failed"}}
		s.book, s.problems = judge.Load(l.ctx, find())
		if s.book == nil {
			return
		}
		if problems := tooNew(s.book, l.options.Version); len(problems) > 0 {
			s.book.Close()
			s.book, s.problems = nil, problems
		}
	})
	return s.book, s.problems
}

// older tells whether a version of this program comes before the one that is
// needed. What stands behind a hyphen does not count, and a part that is not
// there is 0. Either may be empty: then nothing is asked.
func older(version, needed string) bool {
	if version == "" || needed == "" {
		return false
	}
	parts := func(v string) []string {
		v, _, _ = strings.Cut(v, "-")
		return strings.Split(v, ".")
	}
	have, want := parts(version), parts(needed)
	for i := range max(len(have), len(want)) {
		var a, b int
		if i < len(have) {
			a, _ = strconv.Atoi(have[i]) // both have the form of versions
		}
		if i < len(want) {
			b, _ = strconv.Atoi(want[i])
		}
		if a != b {
			return a < b
		}
	}
	return false
}

func (l *library) own(name string) (*judge.Book, source.Problems) {
	return l.load(name, func() judge.Source {
		files, _ := fs.Sub(l.options.Embedded, name) // the folder was listed, so the name is valid
		return judge.Source{Name: name, Files: files, Show: "codebook " + name, Embedded: true, Held: true}
	})
}

// room is one workshop of a run with what its designs share.
type room struct {
	*library
	place    *survey.Workshop
	workshop *workshop.Workshop // nil where there is no workshop.hcl
	cache    design.PartsCache
	weathers facts.Weathers
	problems source.Problems // of the workshop file and its codebooks
	outside  map[string]workshop.Book
	parcels  map[string]*parcel // the outside codebooks as they lie there, by name

	parameters map[string]map[string]judge.Setting
	grades     map[string]verdict.Grade
	answers    map[string][]string // rules of others that an outside codebook may answer

	judges map[string]*judge.Judge // by the names of their books
	mutex  sync.Mutex
}

// settle checks what the workshop file says about codebooks, rules and
// parameters, so that each problem is told once and not for every design.
func (r *room) settle() {
	r.outside, r.judges, r.parcels = map[string]workshop.Book{}, map[string]*judge.Judge{}, map[string]*parcel{}
	r.parameters, r.grades = map[string]map[string]judge.Setting{}, map[string]verdict.Grade{}
	r.answers = map[string][]string{}
	if r.workshop == nil {
		return
	}
	r.problems = append(r.problems, r.workshop.Problems...)
	for _, b := range r.workshop.Books {
		if b.Path != "" {
			r.outside[b.Name] = b
		}
	}
	for _, b := range r.workshop.Books {
		book, problem := r.find(b.Name, b.At)
		if problem != nil {
			r.problems = append(r.problems, *problem)
			continue
		}
		if book == nil {
			continue // its own problems are told where books are collected
		}
		set := map[string]judge.Setting{}
		for _, name := range slices.Sorted(maps.Keys(b.Parameters)) {
			p := b.Parameters[name]
			value, problem := book.Codebook().Set(name, p.Literal, p.At)
			if problem != nil {
				r.problems = append(r.problems, *problem)
				set[name] = judge.Setting{Bad: true, SetAt: p.At} // the default must not stand for it
				continue
			}
			set[name] = judge.Setting{Value: value, SetAt: p.At}
		}
		r.parameters[b.Name] = set
	}
	for i := range r.workshop.Books {
		r.allow(&r.workshop.Books[i])
	}
	for _, g := range r.workshop.Grades {
		if problem := r.knownRule(g.Rule, g.At, "grade."+g.Rule); problem != nil {
			r.problems = append(r.problems, *problem)
			continue
		}
		r.grades[g.Rule] = verdict.Grade(g.As)
	}
}

// allow takes in which rules of others the workshop lets a codebook answer.
func (r *room) allow(b *workshop.Book) {
	for _, a := range b.Answers {
		block := "codebook." + b.Name
		if problem := r.knownRule(a.Rule, a.At, block); problem != nil {
			r.problems = append(r.problems, *problem)
			continue
		}
		name, _, _ := strings.Cut(a.Rule, ".")
		if book, _ := r.find(name, a.At); book != nil && !book.Yields(a.Rule) {
			r.problems = append(r.problems, source.Problem{
				Kind: "answers", Message: fmt.Sprintf("answers: %s yields to no other rule", a.Rule), Block: block,
				Expected: "a rule that yields where it lacks a figure", Found: a.Rule, At: a.At,
			})
			continue
		}
		r.answers[b.Name] = append(r.answers[b.Name], a.Rule)
	}
}

// find gives a codebook by name: the workshop's outside book, or an embedded
// one. book is nil where it could not be loaded; the problem is about the name.
func (r *room) find(name string, at source.Range) (*judge.Book, *source.Problem) {
	if b, ok := r.outside[name]; ok {
		return r.findOutside(b)
	}
	if !slices.Contains(r.embedded, name) {
		known := slices.Concat(r.embedded, slices.Sorted(maps.Keys(r.outside)))
		return nil, &source.Problem{
			Kind: "unknown_name", Message: fmt.Sprintf("no codebook is named %q", name), Block: "codebook." + name,
			Expected: "one of " + strings.Join(known, ", "), Found: name, Near: source.Nearest(name, known), At: at,
		}
	}
	book, problems := r.own(name)
	r.keep(problems)
	return book, nil
}

func (r *room) findOutside(b workshop.Book) (*judge.Book, *source.Problem) {
	refuse := func(kind, message, expected, found string) (*judge.Book, *source.Problem) {
		return nil, &source.Problem{Kind: kind, Message: message, Block: "codebook." + b.Name, Expected: expected, Found: found, At: b.At}
	}
	trusted := slices.Contains(r.options.Trust, b.Name)
	switch {
	case slices.Contains(r.embedded, b.Name):
		return refuse("codebook", fmt.Sprintf("codebook %q comes with the program; one of the workshop's own needs another name", b.Name), "another name", b.Name)
	case !trusted && r.options.Isolation == nil:
		return refuse("trust", fmt.Sprintf("codebook %q lies outside the program and would run inside it: that takes --trust %s", b.Name, b.Name), "--trust "+b.Name, "no such trust")
	}
	parcel := r.parcelOf(b)
	if parcel.refuse != nil {
		again := *parcel.refuse
		return nil, &again
	}
	book, problems := r.load(r.place.Dir+"|"+b.Name, func() judge.Source {
		src := judge.Source{Name: b.Name, Files: parcel.files, Show: r.place.Show(path.Join(r.workshop.Folder, b.Path)), Digest: parcel.digest}
		if !trusted {
			src.Isolation = r.options.Isolation
		}
		return src
	})
	r.keep(problems)
	if book != nil && b.Digest != "" && b.Digest != book.Digest() {
		return refuse("digest", fmt.Sprintf("codebook %q is not the one that was pinned: the folder's files have another digest than the one in %s. A folder's digest is of its files, as codebook list shows it, an archive's of its bytes: they are never the same", b.Name, b.At.File), b.Digest, book.Digest())
	}
	return book, nil
}

// keep records a book's own problems once a workshop.
func (r *room) keep(problems source.Problems) {
	r.mutex.Lock()
	defer r.mutex.Unlock()
	for _, p := range problems {
		if !slices.Contains(r.problems, p) {
			r.problems = append(r.problems, p)
		}
	}
}

// inForce gives the codebooks that judge a design: those always in force, the
// workshop's, the design's own.
func (r *room) inForce(d *design.Design) ([]*judge.Book, source.Problems) {
	var books []*judge.Book
	var problems source.Problems
	var names []string
	add := func(name string, at source.Range, own bool) {
		if slices.Contains(names, name) {
			return
		}
		names = append(names, name)
		book, problem := r.find(name, at)
		if problem != nil && own { // the workshop's are told with the workshop
			problems = append(problems, *problem)
		}
		if book != nil && problem == nil {
			books = append(books, book)
		}
	}
	for _, name := range always {
		if slices.Contains(r.embedded, name) {
			add(name, source.Range{}, false)
		}
	}
	if r.workshop != nil {
		for _, b := range r.workshop.Books {
			add(b.Name, b.At, false)
		}
	}
	if d.Head != nil {
		if v, ok := d.Head.Values["codebooks"]; ok && !v.Bad {
			for i, name := range v.Texts {
				add(name, v.TextsAt[i], true)
			}
		}
	}
	return books, problems
}

func (r *room) parts() []design.PartsGlob {
	if r.workshop == nil {
		return nil
	}
	return r.workshop.Parts
}

// declares gives what a codebook asks designs for; false where there is none of
// that name, or it did not load.
func (r *room) declares(name string) (map[string][]design.Attribute, bool) {
	book, problem := r.find(name, source.Range{})
	if book == nil || problem != nil {
		return nil, false
	}
	return book.Codebook().Declares(), true
}

// judgeOf gives the judge for a set of codebooks; designs with the same set
// share it, and with it the records that it remembers.
func (r *room) judgeOf(books []*judge.Book) *judge.Judge {
	names := make([]string, len(books))
	for i, b := range books {
		names[i] = b.Name()
	}
	key := strings.Join(names, " ")
	r.mutex.Lock()
	j, ok := r.judges[key]
	if !ok {
		j = judge.New(judge.Options{Books: books, Parameters: r.parameters, Grades: r.grades, Answers: r.answers})
		r.judges[key] = j
	}
	r.mutex.Unlock()
	if !ok {
		r.keep(j.Problems())
	}
	return j
}

// ruleIDs lists the rules of some codebooks.
func ruleIDs(books []*judge.Book) []string {
	var ids []string
	for _, b := range books {
		for _, rule := range b.Rules() {
			ids = append(ids, rule.ID)
		}
	}
	return ids
}

// knownRule checks a rule's id against the codebook that it names.
func (r *room) knownRule(id string, at source.Range, block string) *source.Problem {
	name, _, _ := strings.Cut(id, ".")
	book, problem := r.find(name, at)
	if problem != nil {
		problem.Block = block
		return problem
	}
	if book == nil {
		return nil // it did not load: told already
	}
	return unknownRule(id, []*judge.Book{book}, at, block)
}

// unknownRule gives a problem where none of the books has the rule.
func unknownRule(id string, books []*judge.Book, at source.Range, block string) *source.Problem {
	var known []string
	for _, b := range books {
		for _, rule := range b.Rules() {
			if rule.ID == id {
				return nil
			}
			known = append(known, rule.ID)
		}
	}
	p := &source.Problem{
		Kind: "unknown_rule", Message: fmt.Sprintf("no rule in force has the id %q", id), Block: block,
		Expected: "the id of a rule in force", Found: id, At: at,
	}
	suggest(p, known)
	return p
}
