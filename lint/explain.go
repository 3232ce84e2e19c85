package lint

import (
	"context"
	"errors"
	"fmt"
	"slices"
	"strings"

	"stringline/lint/facts"
	"stringline/lint/judge"
	"stringline/schema/codebook"
	"stringline/schema/design"
	"stringline/schema/quantity"
	"stringline/schema/source"
)

// Explanation is what there is to say about a codebook, or one of its rules.
type Explanation struct {
	Book   BookPage
	Whole  bool // the book was asked for, not one rule
	Rules  []RulePage
	Design *DesignResult // where one was named: judged by these rules alone
	// Problems are those of the workshop, of the run on the design, and of the
	// codebook; the pages stand beside them where the book could be loaded.
	Problems source.Problems
}

// BookPage is what a codebook says about itself.
type BookPage struct {
	BookInUse
	Jurisdiction, Needs string
	Covers, CannotJudge []string
	Sources             []codebook.Source
	Parameters          []ParameterPage
	Attributes          []AttributePage
	Tables              []TablePage
}

// RulePage is what a codebook says about one rule.
type RulePage struct {
	RuleInUse
	Waivable   bool
	Each       string // the collection that it judges
	EachMeans  string
	Cites      []codebook.Source
	Parameters []ParameterPage
	Attributes []AttributePage
	Tables     []TablePage
	Equivalent []Equivalent // mutants that mean the same as the rule
	Answers    []Answer     // rules of other codebooks that it answers
	Yields     []string     // figures for want of which it lets another answer
	Rego       string
	At         source.Range
}

// ParameterPage is a parameter with its value in force.
type ParameterPage struct {
	ParameterInUse
	Default, Range, Means string
}

// AttributePage is an attribute that a codebook asks designs for.
type AttributePage struct {
	Name, Of, Kind, Means string
}

// Answer is what a rule answers for another codebook's.
type Answer = judge.Answer

// Equivalent is a mutant that means the same as its rule, with the reason.
type Equivalent = judge.Equivalent

// TablePage is what a table says about itself.
type TablePage = judge.TableAbout

// ExplainOptions says what to explain.
type ExplainOptions struct {
	ShelfOptions        // Path is the design, or the working folder where none is named
	Subject      string // a rule's id, a codebook's name, or a codebook's folder
	Design       bool   // Path is a design: the rules are put to it
	Date         string // for the run on the design
}

// Explain tells about a rule or a whole codebook, and, with a design, how it was
// judged by them. The error says that there is no such rule or codebook.
func Explain(ctx context.Context, o ExplainOptions) (*Explanation, error) {
	r, _, err := openShelf(ctx, o.ShelfOptions)
	if err != nil {
		return nil, err
	}
	defer r.close()
	name, _, _ := strings.Cut(o.Subject, ".")
	book, problems, err := r.bookToExplain(o, name)
	if err != nil {
		return nil, err
	}
	if !o.Design { // what is wrong with other books of the workshop is no matter of this page
		problems = slices.DeleteFunc(slices.Clone(problems), func(p source.Problem) bool {
			return strings.HasPrefix(p.Block, "codebook.") && p.Block != "codebook."+name
		})
	}
	problems.Sort()
	problems = slices.CompactFunc(problems, func(a, b source.Problem) bool { return a == b })
	if book == nil {
		return &Explanation{Problems: problems, Book: BookPage{BookInUse: BookInUse{Name: name}}}, nil
	}
	e := &Explanation{Book: bookPage(book, r), Problems: problems}
	e.Whole = o.Subject == book.Name() || strings.Contains(o.Subject, "/") || o.Subject == "."
	for _, rule := range book.Rules() {
		if e.Whole || rule.ID == o.Subject {
			e.Rules = append(e.Rules, rulePage(book, rule.ID, &e.Book))
		}
	}
	if len(e.Rules) == 0 {
		known := ruleIDs([]*judge.Book{book})
		words := meant(o.Subject, known)
		if words == "" {
			words = fmt.Sprintf("; codebook %s has %d rules, which its page lists", book.Name(), len(known))
		}
		return nil, fmt.Errorf("codebook %s has no rule %q%s", book.Name(), o.Subject, words)
	}
	if !o.Design {
		return e, nil
	}
	found, err := Run(ctx, Options{Disk: o.Disk, Embedded: o.Embedded, WorkingDir: o.WorkingDir, Paths: []string{o.Path}, Date: o.Date,
		Rules: []string{strings.TrimSuffix(o.Subject, "/")}, Trust: o.Trust, Isolation: o.Isolation, Version: o.Version})
	if err != nil {
		return nil, err
	}
	e.Problems = append(e.Problems, found.Problems...)
	if len(found.Designs) == 1 {
		e.Design = &found.Designs[0]
	}
	e.Problems.Sort()
	e.Problems = slices.CompactFunc(e.Problems, func(a, b source.Problem) bool { return a == b })
	return e, nil
}

// bookToExplain finds the codebook: one that comes with the program, one of the
// workshop's own, else a folder.
func (r *room) bookToExplain(o ExplainOptions, name string) (*judge.Book, source.Problems, error) {
	if strings.Contains(o.Subject, "/") || o.Subject == "." {
		if o.Design {
			return nil, nil, errors.New("with a design a codebook is named by its name, which the workshop gives it")
		}
		src, problem := bookSource(o.BookOptions, o.Subject)
		if problem != nil {
			return nil, nil, fmt.Errorf("%s: %s", o.Subject, problem.Message)
		}
		book, problems := judge.Load(r.ctx, src)
		if book != nil {
			if problems = tooNew(book, o.Version); len(problems) > 0 {
				book = nil
			}
		}
		return book, problems, nil
	}
	book, problem := r.find(name, source.Range{})
	switch {
	case problem != nil && problem.Kind == "unknown_name":
		message := problem.Message
		if problem.Near != "" {
			message += fmt.Sprintf("; did you mean %q?", problem.Near)
		} else if words := r.meantRule(o.Subject); words != "" {
			message += words
		} else {
			message += "; there are " + strings.TrimPrefix(problem.Expected, "one of ") + ", or a codebook's folder"
		}
		return nil, nil, errors.New(message)
	case problem != nil:
		return nil, append(slices.Clone(r.problems), *problem), nil
	}
	return book, r.problems, nil
}

// meantRule takes a name that is no codebook's for a rule's without its codebook's:
// it ends a sentence with those in force that it may mean.
func (r *room) meantRule(name string) string {
	if strings.Contains(name, ".") {
		return ""
	}
	books, _ := r.inForce(&design.Design{})
	return meant(name, ruleIDs(books))
}

func bookPage(b *judge.Book, r *room) BookPage {
	own := b.Codebook()
	p := BookPage{BookInUse: bookInUse(b, r), Jurisdiction: own.Jurisdiction, Needs: own.Needs, Covers: own.Covers, CannotJudge: own.CannotJudge, Sources: own.Sources}
	for i := range own.Parameters {
		p.Parameters = append(p.Parameters, parameterPage(&own.Parameters[i], &p.BookInUse))
	}
	for i := range own.Attributes {
		p.Attributes = append(p.Attributes, attributePage(&own.Attributes[i]))
	}
	for _, name := range b.Tables() {
		if t, ok := b.Table(name); ok {
			p.Tables = append(p.Tables, t)
		}
	}
	return p
}

func parameterPage(p *codebook.Parameter, in *BookInUse) ParameterPage {
	page := ParameterPage{Means: p.Means, Default: valueText(p, p.Default)}
	for i := range in.Parameters {
		if in.Parameters[i].Name == p.Name {
			page.ParameterInUse = in.Parameters[i]
		}
	}
	switch {
	case len(p.Words) > 0:
		page.Range = strings.Join(p.Words, ", ")
	case p.Min != nil && p.Max != nil:
		page.Range = quantity.Format(*p.Min, p.Unit) + " to " + quantity.Format(*p.Max, p.Unit)
	}
	return page
}

func valueText(p *codebook.Parameter, v codebook.Value) string {
	switch p.Kind {
	case "word":
		return v.Word
	case "yes_no":
		if v.Yes {
			return "yes"
		}
		return "no"
	}
	if v.Text != "" {
		return v.Text
	}
	return quantity.Format(v.SI, p.Unit)
}

func attributePage(a *codebook.Attribute) AttributePage {
	kind := "a quantity in " + a.Unit
	switch {
	case len(a.Words) > 0:
		kind = "one of " + strings.Join(a.Words, ", ")
	case a.Form == design.YesNo:
		kind = "yes or no"
	case a.Form == design.Word:
		kind = "a word"
	case a.Unit == "":
		kind = "a number"
	}
	return AttributePage{Name: a.Name, Of: a.Of, Kind: kind, Means: a.Means}
}

func rulePage(b *judge.Book, id string, book *BookPage) RulePage {
	a, _ := b.About(id) // the id is one of the book's
	page := RulePage{Waivable: a.Rule.Waivable, Each: a.Rule.Each, Cites: a.Cites, Tables: a.Tables, Equivalent: a.Rule.Equivalent, Answers: a.Rule.Answers, Yields: a.Rule.Yields, Rego: a.Text, At: a.Rule.At}
	for i := range book.Rules {
		if book.Rules[i].ID == id {
			page.RuleInUse = book.Rules[i]
		}
	}
	if c, ok := facts.CollectionOf(a.Rule.Each); ok {
		page.EachMeans = c.Means
	}
	for _, p := range a.Parameters {
		page.Parameters = append(page.Parameters, parameterPage(p, &book.BookInUse))
	}
	for _, x := range a.Attributes {
		page.Attributes = append(page.Attributes, attributePage(x))
	}
	return page
}

// Exit is 2 where something could not be read, or a verdict on the design is void.
func (e *Explanation) Exit() int {
	if len(e.Problems) > 0 || len(e.Rules) == 0 {
		return 2
	}
	if e.Design == nil {
		return 0
	}
	if len(e.Design.Problems) > 0 {
		return 2
	}
	for i := range e.Design.Verdicts {
		if e.Design.Verdicts[i].Outcome == "void" {
			return 2
		}
	}
	return 0
}
