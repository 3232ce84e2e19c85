package report

import (
	"fmt"
	"io"
	"strings"

	"stringline/lint"
)

// BookTests writes what testing codebooks came to, for people: what failed and
// which mutants nobody noticed, then the figures.
func BookTests(w io.Writer, books []lint.TestedBook, opts Page) error {
	p := newPage(opts)
	for i := range books {
		if i > 0 {
			p.blank()
		}
		p.bookTest(&books[i])
	}
	return p.flush(w)
}

func (p *page) bookTest(b *lint.TestedBook) {
	origin := b.Asked
	if b.Embedded {
		origin = "comes with the program"
	}
	if b.Report == nil {
		p.pair(p.line(), "CODEBOOK "+b.Asked, "")
		p.line().put("NOT TESTED: it could not be loaded.", inkStop).end()
		p.blank()
		p.errors(b.Problems)
		return
	}
	r := b.Report
	p.pair(p.line(), "CODEBOOK "+r.Book+" "+r.Version, origin)
	failed, survivors := r.Failed(), r.Survivors()
	var wrong []string
	if n := len(failed); n > 0 {
		wrong = append(wrong, count(n, "test failed", "tests failed"))
	}
	if n := len(survivors); n > 0 {
		wrong = append(wrong, count(n, "mutant that nobody notices", "mutants that nobody notices"))
	}
	if len(wrong) == 0 {
		p.line().put("Nothing found against it.", plain).end()
	} else {
		p.line().put("TO BE PUT RIGHT: ", inkFix).wrap(strings.Join(wrong, ", ")+".", inkFix)
	}
	for i := range failed {
		p.failedTest(i+1, r.Book, &failed[i])
	}
	for i := range survivors {
		p.survivor(len(failed)+i+1, r.Book, &survivors[i])
	}
	if len(survivors) > 0 {
		p.blank()
		p.line().wrap("A mutant is the rule with the change put in: neither the load, nor an example, nor a Rego test has noticed it. Give rule_test.rego a case that tells the two apart. Where there can be none, list the mutant under equivalent in METADATA, with the reason.", plain)
	}
	p.unreached(r)
	p.same(r)
	p.blank()
	p.figures(r)
}

// bookItem writes the head of one entry: what it is, the rule, which test.
func (p *page) bookItem(number int, word, rule, name string) {
	p.blank()
	l := p.line().put(fmt.Sprintf("Item %d", number), plain).to(9).put(word, inkFix)
	if p.narrow() {
		l.end()
		p.line().to(p.labels()).put(rule, plain).end()
		if name != "" {
			p.line().to(p.labels()).wrap(name, plain)
		}
		return
	}
	p.pair(l.to(p.values()), rule, name)
}

func (p *page) failedTest(number int, book string, t *lint.BookTestCase) {
	p.bookItem(number, "TEST", ruleName(book, t.Rule), t.Name)
	for line := range strings.Lines(t.Message) {
		p.line().to(p.values()).wrap(strings.TrimSuffix(line, "\n"), plain)
	}
	p.label("where").wrap(t.At.String(), plain)
}

func (p *page) survivor(number int, book string, m *lint.Mutant) {
	p.bookItem(number, "MUTANT", ruleName(book, m.Rule), "")
	p.label("changed").wrap(m.Name, plain)
	p.label("where").wrap(m.At.String(), plain)
}

// ruleName is a rule's id; what the rules share is no rule.
func ruleName(book, rule string) string {
	switch rule {
	case "":
		return book
	case "shared":
		return book + ", shared/"
	}
	return book + "." + rule
}

// unreached lists the expressions that no Rego test reaches.
func (p *page) unreached(r *lint.BookTest) {
	first := true
	for i := range r.Coverage {
		c := &r.Coverage[i]
		if len(c.Missed) == 0 {
			continue
		}
		if first {
			p.blank()
			p.line().put("NOT REACHED by any Rego test", plain).end()
			first = false
		}
		l := p.line().put(ruleName(r.Book, c.Rule), plain).gap().put(fmt.Sprintf("%d of %d:", len(c.Missed), c.Total), plain).gap()
		var at []string
		for _, m := range c.Missed {
			at = append(at, m.String())
		}
		l.wrapPieces(at, "  ", plain)
	}
}

// same lists the mutants that mean the same as their rule, with the reasons.
func (p *page) same(r *lint.BookTest) {
	first := true
	for i := range r.Mutants {
		m := &r.Mutants[i]
		if m.Reason == "" {
			continue
		}
		if first {
			p.blank()
			p.line().put("THE SAME as the rule, as its METADATA says", plain).end()
			first = false
		}
		p.line().wrap(ruleName(r.Book, m.Rule)+": "+m.Name, plain)
		p.line().to(2).wrap(m.Reason, plain)
	}
}

// figures closes a codebook: how many tests, mutants, and how much is reached.
func (p *page) figures(r *lint.BookTest) {
	words := count(r.Rules, "rule", "rules") + ", " + count(len(r.Results), "test", "tests") + testWords(len(r.Results)-len(r.Failed()), len(r.Failed()))
	p.line().wrap(words, plain)
	if len(r.Mutants) > 0 {
		tally := mutantTally(r)
		p.line().wrap(fmt.Sprintf("%s: %d noticed by the load, %d by an example, %d by a Rego test, %d mean the same, %d noticed by nobody.",
			count(len(r.Mutants), "mutant", "mutants"), tally.Load, tally.Example, tally.RegoTest, tally.Equivalent, tally.Survived), plain)
	}
	reached, total := 0, 0
	for i := range r.Coverage {
		reached, total = reached+r.Coverage[i].Reached, total+r.Coverage[i].Total
	}
	if total > 0 {
		p.line().wrap(fmt.Sprintf("Rego tests reach %d of %d heads and expressions.", reached, total), plain)
	}
}

// testWords says how many tests hold what they claim, and how many do not.
func testWords(held, failed int) string {
	if failed == 0 {
		return fmt.Sprintf(": %d held, none failed.", held)
	}
	return fmt.Sprintf(": %d held, %d failed.", held, failed)
}

func mutantTally(r *lint.BookTest) mutantSummary {
	tally := mutantSummary{Mutants: len(r.Mutants)}
	for i := range r.Mutants {
		switch m := &r.Mutants[i]; {
		case m.Reason != "":
			tally.Equivalent++
		case m.Caught == "load":
			tally.Load++
		case m.Caught == "example":
			tally.Example++
		case m.Caught == "Rego test":
			tally.RegoTest++
		default:
			tally.Survived++
		}
	}
	return tally
}
