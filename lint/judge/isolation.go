package judge

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"strings"
	"sync"

	"github.com/open-policy-agent/opa/v1/ast"

	"stringline/schema/codebook"
	"stringline/schema/source"
)

// Isolation runs codebooks from outside apart from this process: whoever calls
// [Load] hands it down, and what it starts runs [Serve].
//
// # What crosses
//
// To the worker go the codebook's own files, and for each structure of a design
// the tree of ids and units that becomes its `input`. Back come the problems of
// loading or the rules' metadata, and for each structure the rules' records as
// terms: formulas over ids. The values of a design and the codebook's tables stay
// here, where formulas are compiled (units, kinds and ids checked again, exactly
// as for a codebook inside this process) and evaluated. A rule that calls
// fact.value asks for each number while it runs: the formula comes, the one number
// goes, and what was unknown is noted here, where no rule can hide it.
//
// Nothing that a worker says is trusted: each message has a bounded length, is
// read strictly, and names none but its own codebook's rules and files.
type Isolation interface {
	// Start starts a worker for one codebook, which serves many designs.
	Start(ctx context.Context) (Worker, error)
}

// Worker is a process apart, with limits on its time and its memory.
type Worker interface {
	// Exchange sends a request and hands each message that comes back to answer,
	// which gives what to send next, or that the exchange is over. The whole may
	// take no longer than the worker's limit. The error says why there is no
	// answer, in words that follow on "it": "took longer than 10 s". The worker is
	// of no use then. An error of answer is rubbish that the worker sent.
	Exchange(ctx context.Context, request []byte, answer func(message []byte) (reply []byte, over bool, err error)) error
	// Close ends the worker at once.
	Close()
}

// LongestMessage bounds one message of a worker and to a worker, in bytes.
const LongestMessage = 24 << 20

// mostFailures is how often a worker may fail before its codebook is not tried
// any more in this run.
const mostFailures = 3

// remote is a codebook that a worker runs.
type remote struct {
	isolation Isolation
	name      string
	load      []byte // the request that loads it
	loaded    []byte // what a worker answers to that
	mutex     sync.Mutex
	worker    Worker // nil where none runs
	failures  int
	failure   error // the last one
	closed    bool
}

// failedError says that a worker gave no answer.
type failedError struct{ why error }

func (e *failedError) Error() string { return e.why.Error() }

func (r *remote) close() {
	r.mutex.Lock()
	defer r.mutex.Unlock()
	r.closed = true
	if r.worker != nil {
		r.worker.Close()
		r.worker = nil
	}
}

// exchange has a worker that has loaded the codebook answer a request. The error
// is the context's, or a failedError.
func (r *remote) exchange(ctx context.Context, request []byte, answer func([]byte) ([]byte, bool, error)) error {
	r.mutex.Lock()
	defer r.mutex.Unlock()
	switch {
	case r.closed:
		return &failedError{errors.New("was ended with its run")}
	case r.failures >= mostFailures:
		return &failedError{fmt.Errorf("failed %d times in this run; the last time it %w", r.failures, r.failure)}
	case len(request) > LongestMessage:
		return &failedError{fmt.Errorf("was asked about a design that is too large: %d bytes", len(request))}
	}
	err := r.start(ctx)
	if err == nil && request != nil {
		err = r.worker.Exchange(ctx, request, answer)
	}
	if err == nil {
		return nil
	}
	if r.worker != nil {
		r.worker.Close()
		r.worker = nil
	}
	if ctx.Err() != nil {
		return ctx.Err()
	}
	r.failures++
	r.failure = err
	return &failedError{err}
}

// start makes sure that a worker runs and has loaded the codebook.
func (r *remote) start(ctx context.Context) error {
	if r.worker != nil {
		return nil
	}
	w, err := r.isolation.Start(ctx)
	if err != nil {
		return fmt.Errorf("could not be started apart: %w", err)
	}
	r.worker = w
	return w.Exchange(ctx, r.load, func(message []byte) ([]byte, bool, error) {
		if r.loaded == nil {
			r.loaded = slices.Clone(message)
		}
		if !slices.Equal(r.loaded, message) {
			return nil, true, errors.New("loaded differently the second time")
		}
		return nil, true, nil
	})
}

// loadApart has a worker load the codebook. What lies in codebook.hcl and data/
// was read here already.
func (l *loader) loadApart(b *Book) *Book {
	r := &remote{isolation: l.src.Isolation, name: b.codebook.Name}
	p := &packer{}
	p.count(askLoad)
	p.text(l.src.Name)
	p.text(l.src.Show)
	p.count(len(l.files))
	for _, name := range sortedKeys(l.files) {
		p.text(name)
		p.text(string(l.files[name]))
	}
	r.load = p.bytes
	b.remote = r
	err := r.exchange(l.ctx, nil, nil)
	if err == nil {
		err = l.unpackLoaded(b, r.loaded)
	}
	if err != nil {
		r.close()
		if l.ctx.Err() == nil {
			l.bad("codebook.hcl", "codebook %s was ended while it was loaded: it %v", b.codebook.Name, err)
		} else {
			l.bad("codebook.hcl", "loading the codebook: %v", l.ctx.Err())
		}
	}
	if len(l.problems) > 0 {
		r.close()
	}
	return b
}

// unpackLoaded takes in what a worker says about a codebook: problems, or rules.
// Their names must be those of the folders that lie here.
func (l *loader) unpackLoaded(b *Book, message []byte) error {
	u := &unpacker{rest: message}
	switch u.count(tellLast) {
	case tellProblems:
		n := u.length(source.MaxProblems)
		for range n {
			p := u.problem()
			if !b.files[p.At.File] {
				p.At.File = l.src.show("codebook.hcl")
			}
			if !slices.Contains(l.problems, p) {
				l.problems = append(l.problems, p)
			}
		}
		if u.done() != nil || n == 0 {
			return fmt.Errorf("answered what cannot be read: %w", errPacked)
		}
		return nil
	case tellLoaded:
		for range u.length(mostRules) {
			name := u.text(longestCrossing)
			rule := u.rule(b.codebook.Name + "." + name)
			b.names, b.rules = append(b.names, name), append(b.rules, rule)
			if u.yes() {
				b.byValue[name] = true
			}
			if u.wrong == nil && !l.credible(b, &rule) {
				u.refuse()
			}
		}
	default:
		u.refuse()
	}
	if u.done() != nil || !slices.Equal(b.names, l.folders()) {
		return fmt.Errorf("answered what cannot be read: %w", errPacked)
	}
	return nil
}

// folders lists the folders that hold a rule.
func (l *loader) folders() []string {
	var names []string
	for _, name := range sortedKeys(l.files) {
		if folder, ok := strings.CutSuffix(name, "/rule.rego"); ok && folder != "shared" {
			names = append(names, folder)
		}
	}
	slices.Sort(names)
	return names
}

// credible tells whether a rule's metadata is as metadata may be.
func (l *loader) credible(b *Book, r *Rule) bool {
	for _, key := range r.Cites {
		if !slices.ContainsFunc(b.codebook.Sources, func(s codebook.Source) bool { return s.Key == key }) {
			return false
		}
	}
	folder := strings.TrimPrefix(r.ID, b.codebook.Name+".")
	return slices.Contains(grades, string(r.Grade)) && slices.Contains(collectionNames(), r.Each) &&
		r.Title != "" && unshowable(r.Title, "\t") == "" &&
		r.Description != "" && r.Source != "" && r.Remedy != "" && unshowable(r.Description+r.Source+r.Remedy, "\n\t") == "" && r.At.File == l.src.show(folder+"/rule.rego")
}

// ask has a worker put all rules that read no values to a structure.
func (r *remote) ask(ctx context.Context, b *Book, s *structure) (map[string]answer, error) {
	var due []string
	for _, name := range b.names {
		if !b.byValue[name] {
			due = append(due, name)
		}
	}
	if len(due) == 0 {
		return map[string]answer{}, nil
	}
	return r.put(ctx, b, s, due, nil)
}

// askOne has a worker put one rule to a structure.
func (r *remote) askOne(ctx context.Context, b *Book, name string, s *structure, reading *reading) (answer, error) {
	answers, err := r.put(ctx, b, s, []string{name}, reading)
	return answers[name], err
}

func (r *remote) put(ctx context.Context, b *Book, s *structure, due []string, reading *reading) (map[string]answer, error) {
	p := &packer{numbers: map[any]int{}}
	p.count(askRules)
	p.text(due[0]) // of a rule that reads values; otherwise all the others are meant
	p.yes(reading != nil)
	p.shared(ast.NewTerm(s.input))
	answers := map[string]answer{}
	err := r.exchange(ctx, p.bytes, func(message []byte) ([]byte, bool, error) {
		u := &unpacker{rest: message}
		switch u.count(tellLast) {
		case tellValue:
			if reading == nil {
				return nil, true, errPacked
			}
			reply, err := r.value(b, u, reading)
			return reply, false, err
		case tellAnswers:
			clear(answers)
			u.answers(b, due, answers)
		default:
			u.refuse()
		}
		return nil, true, u.done()
	})
	var failed *failedError
	if err != nil && !errors.As(err, &failed) {
		return nil, err
	}
	for _, name := range due {
		a := answers[name]
		a.reading = reading
		if failed != nil {
			a = answer{reading: reading, fault: faultAt(ruleAt(b, name), "codebook %s was ended: it %v", r.name, failed)}
		}
		if reading != nil {
			a.fault = firstFault(a.fault, reading.fault)
		}
		answers[name] = a
	}
	return answers, nil
}

// value answers one call of fact.value.
func (r *remote) value(b *Book, u *unpacker, reading *reading) ([]byte, error) {
	at := u.place()
	tooLarge := u.yes()
	term := u.term(deepestTerm)
	if err := u.done(); err != nil {
		return nil, err
	}
	if !b.files[at.File] {
		at = reading.rule
	}
	p := &packer{}
	p.count(askValue)
	if tooLarge {
		reading.fault = firstFault(reading.fault, faultAt(at, "the formula is too large: more than %d parts or %d levels", largestFormula, deepestFormula))
	} else if number := reading.read(at, term); number != nil {
		p.yes(true)
		p.text(number.String())
		return p.bytes, nil
	}
	p.yes(false)
	return p.bytes, nil
}
