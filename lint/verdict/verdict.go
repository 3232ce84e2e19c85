// Package verdict says what a verdict is: what a rule found about one subject.
// It knows no design, no fact table and no rule engine. Waivers ([Apply]) and a
// baseline ([ReadBaseline]) say which findings are put up with.
package verdict

import (
	"cmp"
	"slices"

	"stringline/schema/source"
)

// Outcome is what became of one judgement.
type Outcome string

// The outcomes, in the words that people read.
const (
	Meets        Outcome = "meets"
	Breaks       Outcome = "breaks"
	Unproven     Outcome = "unproven" // a fact is unknown: Missing names what to supply, Because why a method has no answer
	Waived       Outcome = "waived"   // would break, but a waiver in force permits it
	Void         Outcome = "void"     // the rule itself failed
	DoesNotApply Outcome = "does_not_apply"
)

// Grade is how much a finding matters.
type Grade string

// The grades, worst first.
const (
	Stop   Grade = "stop"   // do not build or energize
	Fix    Grade = "fix"    // put right before sign-off
	Advise Grade = "advise" // worth knowing
)

// Rank orders grades: stop 0, fix 1, advise 2, anything else 3.
func (g Grade) Rank() int {
	switch g {
	case Stop:
		return 0
	case Fix:
		return 1
	case Advise:
		return 2
	}
	return 3
}

// Measured is one side of a comparison. Exactly one of ID (a fact or a
// parameter) and Formula (in words) is set. Value is in Unit, the unit that
// documents show; nil when unknown. Word and Yes hold the value of a "word" and
// of a "yes_no" formula.
type Measured struct {
	ID      string
	Formula string
	Unit    string
	Value   *float64
	Word    *string
	Yes     *bool
	AtLeast *float64 // a bound that holds although the value is unknown
	Says    string   // the value's workings in one line, such as "4 x 37.4 V"; may be empty
}

// Spare is the distance to the limit in the limit's unit; negative beyond it.
type Spare struct {
	Value float64
	Unit  string
}

// Waiver is a written permission that was found for a verdict.
type Waiver struct {
	Reason, ApprovedBy, Expires string
	At                          source.Range
}

// Fault is why a rule is void.
type Fault struct {
	Message string
	At      source.Range
}

// Parameter is a codebook's parameter that a verdict rested on.
type Parameter struct {
	Name  string // without the codebook's name
	Value string // written as a person would, such as "2 %"
	SetAt source.Range
}

// Verdict is one rule on one subject. (Rule, About, Which) is unique in a design.
type Verdict struct {
	Rule, About, Which string
	Outcome            Outcome
	Grade, BookGrade   Grade // Grade is the one in force, after the workshop's changes
	Title, Message     string
	Relation           string // at_most, at_least, equals, between, all_equal, is_true; "" where nothing is compared
	Is                 *Measured
	Limits             []Measured
	Also               []Measured // further formulas that the rule wants shown
	Spare              *Spare
	Headroom           *float64 // share of the limit, 0.15 is 15 %
	Because            string   // the rule's words: why it breaks, or why it does not apply; of an unproven one, why a fact has no answer although all is given
	Missing, Assumed   []string // fact ids
	Parameters         []Parameter
	Waivable           bool
	Waiver             *Waiver
	Fault              *Fault
	Accepted           *Acceptance // by a baseline; nil where it does not list the verdict
	Remedy, Source     string
	At                 []source.Range // first the subject's block, then the deciding attributes
}

// Key identifies a verdict from run to run: rule|about|which.
func (v *Verdict) Key() string { return v.Rule + "|" + v.About + "|" + v.Which }

// Finding reports whether the verdict counts against the design: it breaks, is
// unproven, or is void, and no baseline accepts it as it is. An unproven stop is
// a stop.
func (v *Verdict) Finding() bool {
	return (v.Outcome == Breaks || v.Outcome == Unproven || v.Outcome == Void) && !v.Held()
}

// Held reports a finding that a baseline accepts, and that is no worse than it was
// when it was accepted.
func (v *Verdict) Held() bool { return v.Accepted != nil && v.Accepted.Worse == "" }

// Sort orders verdicts by grade, rule, about and which; equal ones keep their
// order. Verdicts are large, so their places are sorted and each moves once.
func Sort(vs []Verdict) {
	order := make([]int, len(vs))
	for i := range order {
		order[i] = i
	}
	slices.SortFunc(order, func(i, j int) int {
		a, b := &vs[i], &vs[j]
		return cmp.Or(
			cmp.Compare(a.Grade.Rank(), b.Grade.Rank()),
			cmp.Compare(a.Rule, b.Rule),
			cmp.Compare(a.About, b.About),
			cmp.Compare(a.Which, b.Which),
			cmp.Compare(i, j),
		)
	})
	for start, from := range order { // each cycle of the permutation by itself
		if from == start || from < 0 {
			continue
		}
		first, to := vs[start], start
		for from != start {
			vs[to] = vs[from]
			order[to], to, from = -1, from, order[from]
		}
		vs[to], order[to] = first, -1
	}
}
