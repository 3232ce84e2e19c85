package judge

import (
	"fmt"
	"maps"
	"regexp"
	"slices"
	"strings"

	"stringline/lint/facts"
	"stringline/lint/verdict"
	"stringline/schema/source"
)

// Answer says that a rule answers another codebook's question where that one
// lacks a figure. A code's table gives a conductor's ampacity where its maker
// gives none, so the code's rule answers limits.conductor_carries. METADATA
// lists it under custom, with rules of the same codebook that look at what this
// one leaves out:
//
//	answers:
//	  - rule: limits.conductor_carries
//	    with: [conductor_protected]
//
// The other rule has to consent: its METADATA names the figures for want of which
// it yields.
//
//	yields: [ampacity]
//
// Its verdict then does not apply, where all of this holds:
//
//   - it is unproven, for want of nothing but figures of these names;
//   - on the same subject this rule meets or breaks, and neither it nor one of
//     those in with is unproven or void;
//   - what breaks there is graded no lower than the rule that yields, and can be
//     waived only if that one can.
//
// The rules of a codebook from outside answer only where the workshop says so.
type Answer struct {
	Rule string   // "limits.conductor_carries"
	With []string // ids of rules of the same codebook
}

// Bounds on what METADATA may list.
const (
	mostAnswers = 20
	mostYields  = 20
)

var (
	answerKeys  = []string{"rule", "with"}
	ruleID      = regexp.MustCompile(`^[a-z][a-z0-9_]{0,63}\.[a-z][a-z0-9_]{0,63}$`)
	ruleName    = regexp.MustCompile(`^[a-z][a-z0-9_]{0,63}$`)
	answerWords = "METADATA: answers is a list, each with rule, and with where other rules are needed"
)

// answers reads what a rule answers. Whether the rules named exist is looked at
// when the whole codebook is there, and when the codebooks in force are.
func (m *metadata) answers(custom map[string]any, id string) []Answer {
	v, ok := custom["answers"]
	if !ok {
		return nil
	}
	at := m.place("answers")
	list, ok := v.([]any)
	if !ok || len(list) > mostAnswers {
		m.bad(at, "", "%s, and at most %d; not %v", answerWords, mostAnswers, v)
		return nil
	}
	book, _, _ := strings.Cut(id, ".")
	var all []Answer
	for _, item := range list {
		pairs, ok := item.(map[string]any)
		if !ok {
			m.bad(at, "", "%s; this is %v", answerWords, item)
			continue
		}
		for _, key := range slices.Sorted(maps.Keys(pairs)) {
			if !slices.Contains(answerKeys, key) {
				m.bad(at, source.Nearest(key, answerKeys), "METADATA: answers has no key %q", key)
			}
		}
		var a Answer
		a.Rule, _ = pairs["rule"].(string)
		other, _, _ := strings.Cut(a.Rule, ".")
		switch {
		case !ruleID.MatchString(a.Rule):
			m.bad(at, "", "METADATA: answers: rule is the id of a rule, such as limits.conductor_carries, not %q", fmt.Sprint(pairs["rule"]))
			continue
		case other == book:
			m.bad(at, "", "METADATA: answers: %s is a rule of the same codebook", a.Rule)
			continue
		case slices.ContainsFunc(all, func(b Answer) bool { return b.Rule == a.Rule }):
			m.bad(at, "", "METADATA: answers lists %s twice", a.Rule)
			continue
		}
		for _, name := range m.names(pairs["with"], "with", "rules of this codebook", mostAnswers) {
			if a.With = append(a.With, book+"."+name); book+"."+name == id {
				m.bad(at, "", "METADATA: answers: with names the rule itself")
			}
		}
		all = append(all, a)
	}
	return all
}

// yields reads the figures for want of which a rule yields: names of attributes
// or facts of any collection.
func (m *metadata) yields(custom map[string]any) []string {
	v, ok := custom["yields"]
	if !ok {
		return nil
	}
	names := m.names(v, "yields", "figures", mostYields)
	for _, name := range names {
		if !isFactName(name) {
			m.bad(m.place("yields"), source.Nearest(name, factNames()), "METADATA: yields: no attribute or fact is named %q", name)
		}
	}
	if len(names) == 0 && len(m.problems) == 0 {
		m.bad(m.place("yields"), "", "METADATA: yields names no figure")
	}
	return names
}

// names reads a list of names.
func (m *metadata) names(v any, key, what string, most int) []string {
	if v == nil {
		return nil
	}
	list, ok := v.([]any)
	if !ok || len(list) > most {
		m.bad(m.place(key), "", "METADATA: %s is a list of at most %d %s, not %v", key, most, what, v)
		return nil
	}
	var names []string
	for _, item := range list {
		s, _ := item.(string)
		if !ruleName.MatchString(s) {
			m.bad(m.place(key), "", "METADATA: %s: %q is not a name", key, fmt.Sprint(item))
			continue
		}
		names = append(names, s)
	}
	return names
}

func isFactName(name string) bool {
	return slices.ContainsFunc(facts.Collections(), func(c *facts.Collection) bool {
		_, ok := c.Entry(name)
		return ok
	})
}

func factNames() []string {
	var names []string
	for _, c := range facts.Collections() {
		for i := range c.Entries {
			names = append(names, c.Entries[i].Name)
		}
	}
	slices.Sort(names)
	return slices.Compact(names)
}

// answersWithin holds that the rules which an answer needs are there, and about
// the same subjects.
func (b *Book) answersWithin() source.Problems {
	var problems source.Problems
	for i := range b.rules {
		r := &b.rules[i]
		for _, a := range r.Answers {
			for _, id := range a.With {
				other := b.ruleByID(id)
				switch {
				case other == nil:
					problems = append(problems, source.Problem{Kind: "metadata", At: r.At, Near: source.Nearest(id, b.ids()),
						Message: fmt.Sprintf("METADATA: answers: this codebook has no rule %s", id)})
				case other.Each != r.Each:
					problems = append(problems, source.Problem{Kind: "metadata", At: r.At,
						Message: fmt.Sprintf("METADATA: answers: %s judges %s, and this rule %s", id, other.Each, r.Each)})
				}
			}
		}
	}
	return problems
}

func (b *Book) ids() []string {
	ids := make([]string, len(b.rules))
	for i := range b.rules {
		ids[i] = b.rules[i].ID
	}
	return ids
}

// ruleByID finds a rule of this codebook; nil where there is none of that id.
func (b *Book) ruleByID(id string) *Rule {
	book, name, _ := strings.Cut(id, ".")
	if book != b.Name() {
		return nil
	}
	return b.rule(name)
}

// Yields tells whether one of the codebook's rules lets another answer.
func (b *Book) Yields(id string) bool {
	r := b.ruleByID(id)
	return r != nil && len(r.Yields) > 0
}

// answerer is a rule that may answer another's question in this workshop.
type answerer struct {
	id   string
	with []string
}

// answerers finds who may answer whom. Problems are answers to rules in force
// that do not yield, or that judge something else.
func answerers(books []*Book, allowed map[string][]string) (map[string][]answerer, map[string]*Rule, source.Problems) {
	asked, yielding := map[string][]answerer{}, map[string]*Rule{}
	var problems source.Problems
	for _, b := range books {
		for i := range b.rules {
			r := &b.rules[i]
			for _, a := range r.Answers {
				bad := func(near, format string, args ...any) {
					problems = append(problems, source.Problem{Kind: "metadata", At: r.At, Near: near, Message: "METADATA: answers: " + fmt.Sprintf(format, args...)})
				}
				name, _, _ := strings.Cut(a.Rule, ".")
				at := slices.IndexFunc(books, func(b *Book) bool { return b.Name() == name })
				if at < 0 {
					continue // not in force: nobody asks
				}
				other := books[at].ruleByID(a.Rule)
				switch {
				case other == nil:
					bad(source.Nearest(a.Rule, books[at].ids()), "codebook %s has no rule %s", name, a.Rule)
				case len(other.Yields) == 0:
					bad("", "%s yields to no other rule", a.Rule)
				case other.Each != r.Each:
					bad("", "%s judges %s, and this rule %s", a.Rule, other.Each, r.Each)
				case b.Embedded() || slices.Contains(allowed[b.Name()], a.Rule):
					asked[a.Rule] = append(asked[a.Rule], answerer{id: r.ID, with: a.With})
					yielding[a.Rule] = other
				}
			}
		}
	}
	return asked, yielding, problems
}

// settle lets rules yield that lack a figure only, where another has answered.
func (j *Judge) settle(vs []verdict.Verdict) {
	if len(j.answerers) == 0 {
		return
	}
	var by map[string][]*verdict.Verdict // rule, about
	for i := range vs {
		v := &vs[i]
		if v.Outcome != verdict.Unproven || len(j.answerers[v.Rule]) == 0 || !lacksOnly(v, j.yielding[v.Rule].Yields) {
			continue
		}
		if by == nil {
			by = map[string][]*verdict.Verdict{}
			for k := range vs {
				by[vs[k].Rule+"|"+vs[k].About] = append(by[vs[k].Rule+"|"+vs[k].About], &vs[k])
			}
		}
		for _, a := range j.answerers[v.Rule] {
			if a.answers(v, by) {
				yield(v, a.id)
				break
			}
		}
	}
}

// lacksOnly tells whether a verdict is unproven for want of such figures alone.
func lacksOnly(v *verdict.Verdict, names []string) bool {
	for _, id := range v.Missing {
		if !slices.Contains(names, id[strings.LastIndexByte(id, '.')+1:]) {
			return false
		}
	}
	return len(v.Missing) > 0 && v.Because == "" // else a method has no answer besides
}

func (a *answerer) answers(v *verdict.Verdict, by map[string][]*verdict.Verdict) bool {
	judged := false
	for _, rule := range append([]string{a.id}, a.with...) {
		found := by[rule+"|"+v.About]
		if len(found) == 0 {
			return false
		}
		for _, other := range found {
			switch other.Outcome {
			case verdict.Meets:
			case verdict.Breaks:
				if other.Grade.Rank() > v.Grade.Rank() || other.Waivable && !v.Waivable {
					return false
				}
			case verdict.DoesNotApply:
				continue
			default:
				return false
			}
			judged = judged || rule == a.id
		}
	}
	return judged
}

// yield keeps of a verdict what it is about and what it lacks, and says who has answered.
func yield(v *verdict.Verdict, to string) {
	because := to + " judges it, without " + strings.Join(v.Missing, ", ")
	*v = verdict.Verdict{
		Rule: v.Rule, About: v.About, Which: v.Which, Outcome: verdict.DoesNotApply,
		Grade: v.Grade, BookGrade: v.BookGrade, Title: v.Title, Message: because, Because: because, Missing: v.Missing,
		Waivable: v.Waivable, Remedy: v.Remedy, Source: v.Source, At: v.At,
	}
}
