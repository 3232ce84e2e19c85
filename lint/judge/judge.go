// Package judge is the only place that knows the rule engine. It loads, checks
// and compiles codebooks, puts their rules to a design's structure, and turns
// what they answer into verdicts.
//
// Use [Load] for a codebook, [New] for a [Judge] over several of them, and
// [Judge.Judge] for each design. [Test] runs a codebook's own tests.
//
// # How a design is judged
//
// A rule is handed facts, not numbers: every leaf of its input is an id and a
// unit. What it gives back are records made of formulas over such leaves. The
// formulas are checked (units, kinds, tables) and compiled to Go once for a
// design's structure, and evaluated over its values: an unknown stays unknown, a
// verdict knows its headroom, and the same structure with other numbers needs no
// rule engine at all. A rule that calls fact.value is the exception: it is put
// to every design anew.
//
// # How a rule is tested
//
// [Test] runs the Rego tests of a rule, judges its two example designs, takes out
// every attribute that a verdict rested on, and puts small mistakes into the rule,
// one at a time: a [Mutant] is compiled with shared/ alone and put to the load,
// the examples and the Rego tests, and one of them must notice. What no test can
// notice is listed in the rule, with the reason, as [Equivalent].
//
// # What cannot pass in silence
//
// A misspelt fact does not load. Every member of a rule's `each` is owed a
// record, so a rule that goes undefined is void there. A division by zero, an
// empty list and a value beyond a table are void at the call's place. A record
// that cannot be used is void. An error inside the engine makes its rule void.
// None of them harms another rule.
package judge

import (
	"context"
	"fmt"
	"maps"
	"sync"

	"stringline/lint/facts"
	"stringline/lint/verdict"
	"stringline/schema/codebook"
	"stringline/schema/quantity"
	"stringline/schema/source"
)

// Setting is a parameter's value as a workshop sets it.
type Setting struct {
	Value codebook.Value
	SetAt source.Range // in workshop.hcl
	// Bad marks a value that was set and could not be read. The parameter is
	// unknown then: the default must not stand for what the workshop meant.
	Bad bool
}

// Options says what a judge goes by.
type Options struct {
	Books []*Book
	// Parameters holds the workshop's settings by codebook and name, already
	// checked by [codebook.Codebook.Set]. A parameter without one has its default.
	Parameters map[string]map[string]Setting
	// Grades holds the workshop's changes of grades by rule id.
	Grades map[string]verdict.Grade
	// Answers holds, by codebook from outside, the rules of others that the
	// workshop lets it answer, see [Answer]. Embedded codebooks need no leave.
	Answers map[string][]string
}

// Judge puts the rules of some codebooks to designs. It is safe for concurrent
// use, as long as each [facts.System] is used by one goroutine at a time.
type Judge struct {
	books      []*Book
	grades     map[string]verdict.Grade
	parameters map[string]parameter  // by fact id
	answerers  map[string][]answerer // by the rule that yields
	yielding   map[string]*Rule
	problems   source.Problems
	cache      *cache
}

// cache holds what rules answered. Judges that go by other parameters share it:
// records rest on a design's structure alone.
type cache struct {
	mutex sync.Mutex
	asked map[string]*asked // by codebook and structure
	order []string          // of its keys, oldest first
}

// parameter is one parameter in force: as a fact, and as reports show it.
type parameter struct {
	fact  facts.Fact
	shown verdict.Parameter
}

// mostStructures bounds the cache. Its entries are some ten kilobytes each.
const mostStructures = 512

// asked is what a codebook's rules answered for one structure.
type asked struct {
	structure *structure
	rules     map[string]decoded // those that read no values
	shelf     *shelf             // of their formulas
	left      int                // of mostWork, for those that do
}

// decoded is one rule's records.
type decoded struct {
	records []record
	fault   *fault
	reading *reading // of a rule that reads values
}

// New makes a judge. Settings and grades of codebooks and rules that it does not
// have are for the caller to refuse; here they do nothing.
func New(o Options) *Judge {
	j := &Judge{books: o.Books, grades: o.Grades, parameters: map[string]parameter{}, cache: &cache{asked: map[string]*asked{}}}
	for _, b := range o.Books {
		for i := range b.codebook.Parameters {
			p := &b.codebook.Parameters[i]
			set := Setting{Value: p.Default}
			if s, ok := o.Parameters[b.Name()][p.Name]; ok {
				set = s
			}
			j.parameters[ParameterID(b.Name(), p.Name)] = inForce(b.Name(), p, set)
		}
	}
	j.answerers, j.yielding, j.problems = answerers(o.Books, o.Answers)
	return j
}

// With gives a judge that goes by other values of some parameters, named by the ids
// of their facts ("param.practice.voltage_drop_max"); one that no codebook here has
// does nothing. It shares with this one what rules answered for a structure.
func (j *Judge) With(values map[string]codebook.Value) *Judge {
	other := *j
	other.parameters = maps.Clone(j.parameters)
	for _, b := range j.books {
		for i := range b.codebook.Parameters {
			p := &b.codebook.Parameters[i]
			if v, ok := values[ParameterID(b.Name(), p.Name)]; ok {
				other.parameters[ParameterID(b.Name(), p.Name)] = inForce(b.Name(), p, Setting{Value: v})
			}
		}
	}
	return &other
}

func inForce(book string, p *codebook.Parameter, set Setting) parameter {
	f := facts.Fact{ID: ParameterID(book, p.Name), Unit: p.Unit, Known: true, SI: set.Value.SI, Word: set.Value.Word, Yes: set.Value.Yes}
	text := set.Value.Text
	switch p.Kind {
	case "word":
		f.Unit, f.Kind = "word", facts.Word
		text = set.Value.Word
	case "yes_no":
		f.Unit, f.Kind = "yes_no", facts.YesNo
		text = yesNoWord(set.Value.Yes)
	default:
		if text == "" {
			text = quantity.Format(f.SI, p.Unit)
		}
	}
	f.Says = "parameter of codebook " + book
	if set.Bad {
		f = facts.Fact{ID: f.ID, Unit: f.Unit, Kind: f.Kind, Missing: []string{f.ID}}
		text = "unknown"
	}
	return parameter{fact: f, shown: verdict.Parameter{Name: p.Name, Value: text, SetAt: set.SetAt}}
}

// Problems are answers of one codebook to another in force that is not there, or
// does not yield.
func (j *Judge) Problems() source.Problems { return j.problems }

// Books lists the codebooks that the judge goes by.
func (j *Judge) Books() []*Book { return j.books }

// Judge gives every verdict on a design, in the order of [verdict.Sort]. Waivers
// are not looked at: [verdict.Apply] does that. The error is the context's.
func (j *Judge) Judge(ctx context.Context, s *facts.System) ([]verdict.Verdict, error) {
	if err := ctx.Err(); err != nil {
		return nil, fmt.Errorf("judging: %w", err)
	}
	key := s.Structure()
	found := make([]*asked, len(j.books))
	errs := make([]error, len(j.books))
	var wait sync.WaitGroup
	for i, b := range j.books {
		if found[i] = j.cache.remembered(b.Name() + "\x00" + key); found[i] != nil {
			continue
		}
		st := buildStructure(b.codebook, s) // before others run: it reads the system
		wait.Go(func() {
			found[i], errs[i] = ask(ctx, b, st)
		})
	}
	wait.Wait()
	for _, err := range errs {
		if err != nil {
			return nil, err
		}
	}
	c := &court{judge: j, system: s, places: map[string][]source.Range{}}
	most := 0
	for _, a := range found {
		for _, d := range a.rules {
			most += max(len(d.records), 1)
		}
	}
	all := make([]verdict.Verdict, 0, most)
	for i, b := range j.books {
		j.cache.remember(b.Name()+"\x00"+key, found[i])
		var err error
		if all, err = c.book(ctx, b, found[i], all); err != nil {
			return nil, err
		}
	}
	j.settle(all)
	verdict.Sort(all)
	return all, nil
}

func (c *cache) remembered(key string) *asked {
	c.mutex.Lock()
	defer c.mutex.Unlock()
	return c.asked[key]
}

func (c *cache) remember(key string, a *asked) {
	c.mutex.Lock()
	defer c.mutex.Unlock()
	if c.asked[key] != nil {
		return
	}
	if len(c.order) >= mostStructures {
		delete(c.asked, c.order[0])
		c.order = c.order[1:]
	}
	c.asked[key] = a
	c.order = append(c.order, key)
}

// ask puts a codebook's rules to a structure and decodes what they answer.
func ask(ctx context.Context, b *Book, st *structure) (*asked, error) {
	answers, err := b.asker().ask(ctx, b, st)
	if err != nil {
		return nil, fmt.Errorf("evaluating codebook %s: %w", b.Name(), err)
	}
	a := &asked{structure: st, rules: map[string]decoded{}, shelf: newShelf()}
	left := mostWork
	for _, name := range sortedKeys(answers) {
		d := decode(b, name, st, answers[name], a.shelf)
		if !b.Embedded() {
			d.bear(b, name, &left)
		}
		a.rules[name] = d
	}
	a.shelf.close()
	a.left = left
	if len(b.byValue) == 0 {
		a.structure = nil
	}
	return a, nil
}

// put puts one rule to a structure. vs is asked where the rule reads values. left,
// if not nil, is what formulas may still cost, see mostWork.
func (b *Book) put(ctx context.Context, rule string, st *structure, vs values, left *int) (decoded, error) {
	var r *reading
	if b.byValue[rule] {
		r = &reading{structure: st, tables: b.tables, rule: ruleAt(b, rule), values: vs, left: left}
	}
	a, err := b.asker().askOne(ctx, b, rule, st, r)
	if err != nil {
		return decoded{}, fmt.Errorf("evaluating rule %s.%s: %w", b.Name(), rule, err)
	}
	d := decode(b, rule, st, a, nil)
	if left != nil {
		d.bear(b, rule, left)
	}
	return d, nil
}

// decode reads one rule's records. Their formulas are put on the shelf, if there
// is one.
func decode(b *Book, name string, st *structure, a answer, s *shelf) decoded {
	d := decoded{fault: a.fault, reading: a.reading}
	if d.fault != nil {
		return d
	}
	at := ruleAt(b, name)
	if len(a.records) > mostRecords {
		d.fault = faultAt(at, "the rule made %d records, more than %d", len(a.records), mostRecords)
		return d
	}
	d.records = make([]record, len(a.records))
	for i, t := range a.records {
		r := reader{leaves: st.leaves, tables: b.tables, rule: at, shelf: s}
		d.records[i] = r.record(t)
	}
	return d
}

// mostRecords bounds what one rule may answer for one design.
const mostRecords = 20000
