package judge

import (
	"context"
	"encoding/json"
	"fmt"
	"path"
	"strings"
	"testing/fstest"

	"github.com/open-policy-agent/opa/v1/ast"

	"stringline/lint/verdict"
	"stringline/schema/source"
)

// What this process asks of a worker, by the first number of a message.
const (
	askLoad  = iota // the codebook's files; answered by tellProblems or tellLoaded
	askRules        // a structure, for all rules that read no values or for one that does; answered by tellAnswers
	askValue        // the answer to tellValue
	askLast  = askValue
)

// What a worker tells.
const (
	tellProblems = iota
	tellLoaded
	tellAnswers
	tellValue // a rule calls fact.value; answered by askValue
	tellLast  = tellValue
)

// Bounds on what a worker tells.
const (
	mostCites         = 100
	longestMessage    = 2000 // of a problem or a fault
	mostAnswerRecords = 100_000
)

// Serve is the worker's side of [Isolation]: it loads the one codebook that it
// is sent and puts its rules to structures until receive gives an error, which
// it returns. receive and send pass whole messages.
func Serve(ctx context.Context, receive func() ([]byte, error), send func([]byte) error) error {
	s := &server{receive: receive, send: send}
	for {
		message, err := receive()
		if err != nil {
			return err
		}
		u := &unpacker{rest: message, share: true}
		var reply []byte
		switch u.count(askLast) {
		case askLoad:
			reply, err = s.load(ctx, u)
		case askRules:
			reply, err = s.ask(ctx, u)
		default:
			err = errPacked
		}
		if err == nil {
			err = send(reply)
		}
		if err != nil {
			return fmt.Errorf("serving a codebook: %w", err)
		}
	}
}

type server struct {
	receive func() ([]byte, error)
	send    func([]byte) error
	book    *Book
}

func (s *server) load(ctx context.Context, u *unpacker) ([]byte, error) {
	src := Source{Name: u.text(longestCrossing), Show: u.text(longestCrossing)}
	files := fstest.MapFS{}
	for range u.length(mostFiles) {
		name := u.text(longestCrossing)
		files[name] = &fstest.MapFile{Data: u.raw(largestFile), Mode: 0o444}
	}
	if err := u.done(); err != nil {
		return nil, err
	}
	src.Files = files
	book, problems := Load(ctx, src)
	p := &packer{}
	if book == nil {
		p.count(tellProblems)
		p.count(min(len(problems), source.MaxProblems))
		for i := range min(len(problems), source.MaxProblems) {
			p.problem(&problems[i])
		}
		return p.bytes, nil
	}
	s.book = book
	p.count(tellLoaded)
	p.count(len(book.names))
	for i, name := range book.names {
		p.text(name)
		p.rule(&book.rules[i])
		p.yes(book.byValue[name])
	}
	return p.bytes, nil
}

// ask puts rules to a structure. What they make is packed as it is: formulas are
// compiled where the values are.
func (s *server) ask(ctx context.Context, u *unpacker) ([]byte, error) {
	name, one := u.text(longestCrossing), u.yes()
	input := u.term(deepestTerm)
	if err := u.done(); err != nil || s.book == nil || one && s.book.engine.single[name] == nil {
		return nil, errPacked
	}
	st := &structure{input: input.Value}
	var answers map[string]answer
	var err error
	if one {
		var a answer
		a, err = s.book.engine.askWith(ctx, s.book, name, st, &asking{server: s})
		answers = map[string]answer{name: a}
	} else {
		answers, err = s.book.engine.ask(ctx, s.book, st)
	}
	if err != nil {
		return nil, err
	}
	p := &packer{}
	p.count(tellAnswers)
	p.count(len(answers))
	for _, name := range sortedKeys(answers) {
		p.text(name)
		p.answer(answers[name])
	}
	return p.bytes, nil
}

// asking is fact.value in a worker: it asks the other side.
type asking struct {
	server *server
	failed error
}

func (a *asking) read(at source.Range, operand *ast.Term) *ast.Term {
	if a.failed != nil {
		return nil
	}
	p := &packer{}
	p.count(tellValue)
	p.place(at)
	before := len(p.bytes)
	p.yes(false)
	if !p.crossing(operand) {
		p.bytes = p.bytes[:before]
		p.yes(true)
		p.count(tagNull)
	}
	if a.failed = a.server.send(p.bytes); a.failed != nil {
		return nil
	}
	reply, err := a.server.receive()
	if a.failed = err; err != nil {
		return nil
	}
	u := &unpacker{rest: reply}
	if u.count(askLast) != askValue || !u.yes() {
		return nil
	}
	return ast.NumberTerm(json.Number(u.text(longestCrossing)))
}

func (p *packer) problem(of *source.Problem) {
	for _, s := range []string{of.Kind, of.Message, of.Block, of.Expected, of.Found, of.Near} {
		p.text(clip(s, longestMessage))
	}
	p.place(of.At)
}

func (u *unpacker) problem() source.Problem {
	return source.Problem{
		Kind: u.text(longestMessage), Message: u.text(longestMessage), Block: u.text(longestMessage),
		Expected: u.text(longestMessage), Found: u.text(longestMessage), Near: u.text(longestMessage), At: u.place(),
	}
}

func (p *packer) rule(r *Rule) {
	for _, s := range []string{r.Title, r.Description, r.Each, r.Source, r.Remedy, string(r.Grade)} {
		p.text(s)
	}
	p.yes(r.Waivable)
	p.texts(r.Cites)
	p.place(r.At)
	p.texts(r.Yields)
	p.count(len(r.Answers))
	for _, a := range r.Answers {
		p.text(a.Rule)
		p.texts(a.With)
	}
}

func (u *unpacker) rule(id string) Rule {
	r := Rule{
		ID: id, Title: u.text(longestTitle), Description: u.text(longestText), Each: u.text(longestText),
		Source: u.text(longestText), Remedy: u.text(longestText), Grade: verdict.Grade(u.text(longestText)),
		Waivable: u.yes(), Cites: u.texts(mostCites, longestCrossing), At: u.place(),
		Yields: u.texts(mostYields, longestCrossing),
	}
	for range u.length(mostAnswers) {
		r.Answers = append(r.Answers, Answer{Rule: u.text(longestCrossing), With: u.texts(mostAnswers, longestCrossing)})
	}
	return r
}

// answer packs what the engine made of one rule.
func (p *packer) answer(a answer) {
	p.yes(a.fault != nil)
	if a.fault != nil {
		p.text(clip(a.fault.message, longestMessage))
		p.place(a.fault.at)
		return
	}
	// One more than may be is enough to have it refused.
	n := min(len(a.records), mostRecords+1)
	p.count(n)
	for _, t := range a.records[:n] {
		p.place(rangeOf(t.Location))
		before := len(p.bytes)
		p.yes(true)
		if !p.crossing(t) {
			p.bytes = p.bytes[:before]
			p.yes(false)
		}
	}
}

// answers reads what a worker's rules made of a structure: one answer for each
// rule that is due, none for another.
func (u *unpacker) answers(b *Book, due []string, into map[string]answer) {
	if u.count(len(due)) != len(due) {
		u.refuse()
	}
	records := 0
	for i := 0; i < len(due) && u.wrong == nil; i++ {
		if u.text(longestCrossing) != due[i] {
			u.refuse()
			return
		}
		rule := ruleAt(b, due[i])
		own := func(at source.Range) source.Range {
			if b.files[at.File] {
				return at
			}
			return rule
		}
		var a answer
		if u.yes() {
			a.fault = &fault{message: u.text(longestMessage)}
			a.fault.at = own(u.place())
			into[due[i]] = a
			continue
		}
		n := u.length(mostRecords + 1)
		if records += n; records > mostAnswerRecords {
			a.fault = faultAt(rule, "the codebook made more than %d records for one design", mostAnswerRecords)
		}
		for j := 0; j < n && u.wrong == nil; j++ {
			at := own(u.place())
			if !u.yes() {
				a.fault = firstFault(a.fault, faultAt(at, "a record is too large: more than %d parts or %d levels", mostNodes, deepestTerm))
				continue
			}
			t := u.term(deepestTerm)
			t.Location = &ast.Location{File: at.File, Row: at.Start.Line, Col: at.Start.Column, Offset: at.Start.Byte}
			a.records = append(a.records, t)
		}
		into[due[i]] = a
	}
}

// showsOf lists a codebook's files as they are shown.
func (l *loader) showsOf() map[string]bool {
	shown := map[string]bool{}
	for name := range l.files {
		shown[l.src.show(name)] = true
	}
	return shown
}

// bounded keeps the first problems, with messages that a person can read.
func bounded(problems source.Problems) source.Problems {
	problems = problems[:min(len(problems), source.MaxProblems)]
	for i := range problems {
		p := &problems[i]
		for _, s := range []*string{&p.Message, &p.Block, &p.Expected, &p.Found, &p.Near} {
			*s = clip(*s, longestMessage)
		}
	}
	return problems
}

// portable tells whether a file's name is one that can be shown and sent.
func portable(name string) bool {
	return len(name) <= longestCrossing && strings.ToValidUTF8(name, "") == name && path.Clean(name) == name
}
